import type { Reading } from '../../engine/model/reading.ts';
import { printQuantity } from '../../engine/quantity/index.ts';
import { expectationOf, type Session } from '../../engine/run/index.ts';
import { twinOf } from '../../engine/scale/index.ts';

/** What known-good boards show in a reading. */
export interface KnownGood {
  /** Values with where they come from: `1.2 Vpp`, `board sheet, 2026-03-02, bench meter`. */
  readonly shown: readonly { readonly value: string; readonly from: string }[];
  /** The limits rest on what a known-good board shows. */
  readonly decides: boolean;
}

/** Null where nothing is known and nothing rests on it. */
export function knownGood(session: Session, reading: Reading): KnownGood | null {
  if (reading.measure.kind !== 'quantity') return null;
  const decides = expectationOf(session, reading).because.some(({ setting }) => setting === 'twin');
  const shown = [...here(session, reading), ...onSheet(session, reading), ...usual(reading)];
  return shown.length === 0 && !decides ? null : { shown, decides };
}

function here(session: Session, reading: Reading): KnownGood['shown'] {
  const twin = twinOf(reading, session);
  return twin?.from === 'this job' ? [{ value: printQuantity(twin.value), from: 'read in this job' }] : [];
}

/** Of several days the last comes first. */
const onSheet = ({ board }: Session, { id }: Reading): KnownGood['shown'] =>
  (board?.references ?? [])
    .filter(({ reading }) => reading === id)
    .toSorted((a, b) => b.date.localeCompare(a.date))
    .map(({ value, date, instrument }) => ({
      value: printQuantity(value),
      from: ['board sheet', date, instrument].filter((part) => part !== '').join(', '),
    }));

const usual = ({ usual: value }: Reading): KnownGood['shown'] =>
  value === null ? [] : [{ value: printQuantity(value), from: 'as the tree has it' }];
