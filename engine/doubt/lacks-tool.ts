import type { Equipment } from '../model/instrument.ts';
import type { Reading } from '../model/reading.ts';

/** The first tool a reading asks for that is not there, so that it cannot be taken; null where it can. */
export const lacksTool = (reading: Reading, { lacking }: Equipment): string | null =>
  reading.with.find((tool) => lacking.includes(tool)) ?? null;
