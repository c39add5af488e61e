import type { Instrument } from '../model/instrument.ts';
import type { Taken } from '../model/refusal.ts';
import { tidy } from '../quantity/index.ts';
import { parseRange } from './parse-range.ts';

const example = 'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV';
const longest = 2000;
const mostRanges = 60;
const shape = /^([^():;]{1,60}?) ?\(([^()]{1,60})\) ?: ?(.*)$/;

/** One line about an instrument, as a technician types it:
 *
 *      bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.8 % + 3) at 10 mV
 *      name         tool    range   of reading + digits  last digit
 *
 *  Ranges may also be given in parts of the range: `10 V ± (0.0020 % + 0.0005 % of range)`. */
export function parseInstrument(text: string): Taken<Instrument> {
  if (text.length > longest) {
    return refuse(`This is ${text.length} characters long, and an instrument has at most ${longest}`, [
      example,
    ]);
  }
  const line = tidy(text);
  if (line === '') return refuse('Nothing was typed', [example]);
  const [, name = '', tool = '', rest = ''] = shape.exec(line) ?? [];
  if (name.trim() === '' || tool.trim() === '') return refuse(noHead(line), offersFor(line));
  const written = rest.split(';').filter((part) => part.trim() !== '');
  if (written.length === 0) return refuse(`"${name}" has no range: write one behind the colon`, [example]);
  if (written.length > mostRanges) {
    return refuse(`"${name}" has more than ${mostRanges} ranges`, [example]);
  }
  const ranges = written.map(parseRange);
  const wrong = ranges.findIndex((range) => !range.ok);
  const bad = ranges[wrong];
  if (bad !== undefined && !bad.ok) {
    const offers = bad.refusal.offers.map((offer) => `${name} (${tool}): ${offer}`);
    return refuse(bad.refusal.text, offers.length > 0 ? offers : [example]);
  }
  return {
    ok: true,
    value: {
      name: name.trim(),
      tool: tool.trim(),
      ranges: ranges.flatMap((range) => (range.ok ? [range.value] : [])),
    },
  };
}

const noHead = (line: string): string =>
  `"${line.slice(0, 60)}" does not begin with a name, the tool it is in brackets, and a colon`;

/** Where only the tool is missing, the name may do for it. */
function offersFor(line: string): readonly string[] {
  const [, name = '', rest = ''] = /^([^():;]{1,60}?) ?: ?(.*)$/.exec(line) ?? [];
  const offer = `${name.trim()} (${name.trim()}): ${rest}`;
  return name.trim() !== '' && parseInstrument(offer).ok ? [offer, example] : [example];
}

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
