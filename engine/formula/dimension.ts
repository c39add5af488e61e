import { type Qualifier, storedUnit, unitTable, type Vector } from '../quantity/index.ts';

/** What kind of quantity a formula gives. */
export interface Dimension {
  readonly vector: Vector;
  readonly qualifier: Qualifier;
  /** How it is spoken of: `MHz`, `V`, `V·s`; empty for a plain number. */
  readonly text: string;
}

export function dimensionOf(unit: string): Dimension {
  const { row, qualifier, text } = storedUnit(unit);
  return { vector: row.vector, qualifier, text };
}

export const plainNumber: Dimension = { vector: [0, 0, 0, 0], qualifier: '', text: '' };

/** What both quantities are, or null where they cannot be added or compared. A plain voltage may be
 *  set against any kind of voltage: `vcc * 60 %` is a fair limit for a swing. */
export function common(a: Dimension, b: Dimension): Dimension | null {
  if (!a.vector.every((power, at) => power === b.vector[at])) return null;
  if (a.qualifier === b.qualifier || b.qualifier === '') return a;
  return a.qualifier === '' ? b : null;
}

/** Whether `found` may stand for a reading of dimension `wanted`. */
export function fits(wanted: Dimension, found: Dimension): boolean {
  const both = common(wanted, found);
  return both !== null && (both.qualifier === wanted.qualifier || both.qualifier === 'dc');
}

/** @param sign 1 to multiply, -1 to divide */
export function combine(a: Dimension, b: Dimension, sign: 1 | -1): Dimension {
  if (isPlain(b)) return a;
  if (isPlain(a) && sign === 1) return b;
  const [v, i, s, t] = a.vector;
  const [bv, bi, bs, bt] = b.vector;
  const vector: Vector = [v + sign * bv, i + sign * bi, s + sign * bs, t + sign * bt];
  return { vector, qualifier: '', text: textOf(vector) };
}

export const isPlain = ({ vector }: Dimension): boolean => vector.every((power) => power === 0);

function textOf(vector: Vector): string {
  const same = unitTable.find((row) => row.vector.every((power, at) => power === vector[at]));
  if (vector.every((power) => power === 0)) return '';
  if (same) return same.symbol;
  return vector
    .flatMap((power, at) => (power === 0 ? [] : [`${'VAs°'[at]}${power === 1 ? '' : `^${power}`}`]))
    .join('·');
}
