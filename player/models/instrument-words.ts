import { plusMinusOf } from '../../engine/doubt/index.ts';
import type { Instrument } from '../../engine/model/instrument.ts';
import { fractionOf, printQuantity, withPrefix } from '../../engine/quantity/index.ts';

/** One range as it is understood. */
interface RangeWords {
  /** `6 V` */
  readonly upTo: string;
  /** How far off the greatest value of the range can be: `± 32 mV`. */
  readonly plusMinus: string;
}

/** The ranges of an instrument, the smallest first, and how far off each can be at its top. */
export function rangeWords(instrument: Instrument): readonly RangeWords[] {
  return instrument.ranges.map((range) => {
    const top = withPrefix(fractionOf(range.upTo), range.unit);
    const off = plusMinusOf({ ...instrument, ranges: [range] }, { value: range.upTo, unit: range.unit });
    return {
      upTo: printQuantity(top),
      plusMinus: off === null ? '' : `± ${printQuantity(withPrefix(off.value, range.unit))}`,
    };
  });
}
