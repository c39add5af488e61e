import type Fraction from 'fraction.js';
import type { Instrument, InstrumentRange } from '../model/instrument.ts';
import { fractionOf, printNumber, printQuantity, withPrefix } from '../quantity/index.ts';

/** An instrument as one line, which `parseInstrument` reads back. */
export const printInstrument = ({ name, tool, ranges }: Instrument): string =>
  `${name} (${tool}): ${ranges.map(printRange).join('; ')}`;

/** `6 V ± (0.5 % + 2) at 1 mV` */
function printRange({ unit, upTo, ofReading, ofRange, digits, resolution }: InstrumentRange): string {
  const terms = [percent(fractionOf(ofReading))];
  if (ofRange !== '0') terms.push(`${percent(fractionOf(ofRange))} of range`);
  if (digits > 0) terms.push(String(digits));
  const [first] = terms;
  const accuracy = terms.length === 1 ? first : `(${terms.join(' + ')})`;
  const last = resolution === '0' ? '' : ` at ${print(resolution, unit)}`;
  return `${print(upTo, unit)} ± ${accuracy}${last}`;
}

const percent = (share: Fraction): string => `${printNumber(share.mul(100))} %`;

const print = (value: string, unit: string): string => printQuantity(withPrefix(fractionOf(value), unit));
