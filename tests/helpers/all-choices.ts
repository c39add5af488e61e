import type { Choose } from '../../engine/cases/walk-fault.ts';

/** One way to choose for each walk, until every way was walked or `most` of them. Like a counter whose digits are the
 *  names that were asked with more than one way: the last one turns fastest. */
export function* allChoices(most: number): Generator<Choose> {
  const digits = new Map<string, { at: number; readonly of: number }>();
  for (let count = 0; count < most; count += 1) {
    const met: string[] = [];
    yield (name, of) => {
      met.push(name);
      const digit = digits.get(name) ?? { at: 0, of };
      digits.set(name, digit);
      return digit.at;
    };
    for (const name of met.reverse()) {
      const digit = digits.get(name) as { at: number; readonly of: number };
      digit.at += 1;
      if (digit.at < digit.of) break;
      digits.delete(name);
    }
    if (digits.size === 0) return;
  }
}
