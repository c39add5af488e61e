import type { Reading } from '../../model/reading.ts';
import type { ConditionChange, Lack } from '../question.ts';

/** Why something is held back. */
export function heldText(lacking: readonly Lack[]): string {
  const lacks = lacking.map(({ need, known }) => {
    const wanted = `"${need.reading}" must be ${need.bands.join(' or ')}`;
    if (known === null || known.bands.length === 0) return `${wanted} and was not read yet`;
    const old = known.stale ? 'before the board was altered' : 'before';
    return `${wanted}, and was ${known.bands.join(' or ')} ${old}`;
  });
  return `This is held back: ${lacks.join('; ')}. Read that first, or override with a reason`;
}

export const arrangeText = ({ id }: Reading, changes: readonly ConditionChange[]): string =>
  `"${id}" is taken with ${wantedOf(changes)}: bring the board into that condition and say so`;

/** How it is said. */
export const arrangeOffer = (changes: readonly ConditionChange[]): string => `arrange ${wantedOf(changes)}`;

const wantedOf = (changes: readonly ConditionChange[]): string =>
  changes.map(({ condition, wanted }) => `${condition} ${wanted}`).join(', ');
