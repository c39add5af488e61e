import type { Fault } from '../model/fault.ts';

/** What a board is suspected of: one fault, two at once, or none that the tree lists. */
export const suspectName = (faults: readonly Pick<Fault, 'is'>[]): string =>
  faults.length === 0
    ? 'None of these: a fault that this tree does not list'
    : faults.map(({ is }) => is).join(', together with: ');
