import type { Finding } from '../../engine/run/index.ts';
import { asShown } from '../parts/as-shown.ts';

/** What several readings say together, and what to make of it. */
export function findingWords({ text, reading }: Finding): string {
  const isFactor = reading.from?.kind === 'call' && reading.from.name === 'factor';
  return isFactor ? `${asShown(text)}. Look upstream of where they part.` : `${asShown(text)}.`;
}
