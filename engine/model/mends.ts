import type { FaultSection, Section } from './section.ts';

/** Whether it is the section in which a fault is mended. */
export const mends = (section: Section | null, fault: string): section is FaultSection =>
  section?.kind === 'fault' && section.remedies.some((remedy) => remedy.fault === fault);
