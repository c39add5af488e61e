import Fraction from 'fraction.js';
import type { Measure, Reading } from '../model/reading.ts';
import { exactOf, fromStored, printQuantity } from '../quantity/index.ts';
import type { Session } from '../run/index.ts';
import { allNormal, bandOfCode, beepText, memberReading, otherBand, resolveScale } from '../scale/index.ts';

type Typed = {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    band: string,
    session: Session,
    reading: Reading,
  ) => string;
};

const typed: Typed = {
  quantity: (_, band, session, reading) => {
    const { bands, limits, unit } = resolveScale(reading, session);
    const at = bands.indexOf(band);
    const [low, high] = [limits[at - 1], limits[at]].map((limit) => (limit ? fromStored(limit) : null));
    return printQuantity({ value: exactOf(middle(low ?? null, high ?? null)), unit });
  },
  options: (_, band) => band,
  codes: (measure, band) =>
    measure.ranges.find((range) => range.band === band)?.from ?? unlistedCode(measure),
  beeps: ({ patterns }, band) =>
    beepText(patterns.find((pattern) => pattern.band === band)?.pattern ?? '9-9-9'),
  tries: ({ enough }, band) =>
    ({ never: `0 of ${enough}`, always: `${enough} of ${enough}` })[band] ?? `1 of ${enough + 1}`,
  each: ({ members, normal }, band, session, reading) => {
    const one = (name: string): string => typedFor(session, memberReading(reading), name);
    const odd = oddOf(band, members.length);
    const rest = one(normal[0] ?? '');
    return members.map((name, at) => `${name} ${odd[at] === undefined ? rest : one(odd[at])}`).join('; ');
  },
};

/** What a technician would type for a reading that lies in `band`: the option's name, a code, a count, a row, or a value in
 *  the middle of the band at the present settings. */
export function typedFor(session: Session, reading: Reading, band: string): string {
  return typed[reading.measure.kind](reading.measure as never, band, session, reading);
}

/** A code that the table does not list. */
function unlistedCode(measure: Extract<Measure, { readonly kind: 'codes' }>): string {
  for (let code = 16 ** Math.min(measure.digits, 5) - 1; code >= 0; code -= 1) {
    const text = code.toString(16).toUpperCase().padStart(measure.digits, '0');
    if (bandOfCode(measure, text) === otherBand) return text;
  }
  return otherBand;
}

/** The bands of the first members, where the whole is in `band`: the others are normal. */
function oddOf(band: string, members: number): readonly string[] {
  if (band === allNormal) return [];
  if (band.includes('+')) return band.split('+');
  const [, count = '', kind = ''] = /^(one|several|all)-(.*)$/.exec(band) ?? [];
  const many: Readonly<Record<string, number>> = { one: 1, several: 2, all: members };
  return Array<string>(many[count] ?? 0).fill(kind);
}

function middle(low: Fraction | null, high: Fraction | null): Fraction {
  if (low !== null && high !== null) return low.add(high).div(2);
  if (high !== null) return high.compare(0) > 0 ? high.div(2) : high.mul(2).sub(1);
  if (low !== null) return low.compare(0) > 0 ? low.mul(2) : low.div(2).add(1);
  return new Fraction(1);
}
