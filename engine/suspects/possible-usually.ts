import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import { bandsOf } from '../scale/index.ts';
import type { PossibleBands } from './possible-bands.ts';

export const possibleUsually =
  (
    _tree: { readonly readings: readonly Reading[]; readonly settings?: readonly Setting[] },
    _fault: Pick<Fault, 'sets'> | null = null,
  ): PossibleBands =>
  (derived) =>
    bandsOf(derived);
