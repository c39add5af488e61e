import type { Equipment } from '../model/instrument.ts';
import type { Present } from '../model/present.ts';
import type { Measure, Reading } from '../model/reading.ts';
import { beepText, memberReading, observe } from '../scale/index.ts';
import type { Dice } from './dice.ts';
import { oddMembers } from './odd-members.ts';
import { showQuantity } from './show-quantity.ts';
import { strangeBeeps, strangeCode } from './strange.ts';

/** What values are shown by: settings, a known-good board, instruments. */
export interface Bench {
  readonly present: Present;
  readonly equipment: Equipment;
}

/** Where chance comes from: the value itself, and what changes from one taking to the next (null: nothing does). */
interface Chance {
  readonly dice: Dice;
  readonly noise: Dice | null;
  readonly fine: number;
}

type Show = {
  readonly [Kind in Measure['kind']]: (
    measure: Extract<Measure, { kind: Kind }>,
    band: string,
    reading: Reading,
    bench: Bench,
    chance: Chance,
  ) => string;
};

const shows: Show = {
  quantity: ({ unit }, band, reading, bench, chance) => showQuantity(reading, unit, band, bench, chance),
  options: (_, band) => band,
  codes: (measure, band, _reading, _bench, { dice }) => {
    const ranges = measure.ranges.filter((range) => range.band === band);
    return ranges.length === 0 ? strangeCode(measure, dice) : codeIn(dice.of(ranges), dice);
  },
  beeps: (measure, band, _reading, _bench, { dice }) => {
    const patterns = measure.patterns.filter((row) => row.band === band);
    return beepText(patterns.length === 0 ? strangeBeeps(measure, dice) : dice.of(patterns).pattern);
  },
  tries: ({ enough }, band, _reading, _bench, { dice }) => {
    const worked =
      band === 'never' ? 0 : band === 'always' ? enough : 1 + dice.below(Math.max(1, enough - 1));
    return `${worked} of ${Math.max(enough, worked + (band === 'sometimes' ? 1 : 0))}`;
  },
  each: (measure, band, reading, bench, chance) => {
    const one = memberReading(reading);
    const odd = oddMembers(measure, band, chance.dice);
    const [rest = ''] = measure.normal;
    if (measure.of.kind === 'quantity') {
      return measure.members
        .map((name) => `${name} ${shown(one, odd.get(name) ?? rest, bench, chance)}`)
        .join('; ');
    }
    const told = [...odd].map(([name, is]) => `${name} ${shown(one, is, bench, chance)}`);
    const isAll = odd.size === measure.members.length;
    return [...told, ...(isAll ? [] : [`rest ${shown(one, rest, bench, chance)}`])].join('; ');
  },
};

const shown = (reading: Reading, band: string, bench: Bench, chance: Chance): string =>
  shows[reading.measure.kind](reading.measure as never, band, reading, bench, chance);

function codeIn({ from, to }: { readonly from: string; readonly to: string }, dice: Dice): string {
  if (from === to) return from;
  const first = Number.parseInt(from, 16);
  const code = first + dice.below(Number.parseInt(to, 16) - first + 1);
  return code.toString(16).toUpperCase().padStart(from.length, '0');
}

/** How often a value is drawn anew, each time shown more finely, until it is judged back into its band. */
const mostDraws = 8;

/** What a technician would type for a reading that lies in a band: it is judged back into that band, or is too close to
 *  call with the band among those it may be in.
 *  @param dice a stream for each draw */
export function showBand(
  reading: Reading,
  band: string,
  bench: Bench,
  dice: (draw: number) => Dice,
  noise: Dice | null,
): string {
  let text = '';
  for (let draw = 0; draw < mostDraws; draw += 1) {
    const chance = { dice: dice(draw), noise: draw === 0 ? noise : null, fine: Math.max(0, draw - 2) };
    text = shown(reading, band, bench, chance);
    const seen = observe(reading, bench.present, text, bench.equipment);
    if (seen.ok && seen.value.bands.includes(band)) return text;
  }
  return text;
}
