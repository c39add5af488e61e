import type { Mark } from '../model/observation.ts';
import type { Taken } from '../model/refusal.ts';
import { storedUnit } from './parse-unit.ts';
import { readValue, type TypedValue } from './read-value.ts';
import { splitMark } from './split-mark.ts';
import { tidy } from './tidy.ts';
import type { Unit } from './unit.ts';

/** What a technician typed for a quantity, understood. */
interface TypedQuantity extends TypedValue {
  readonly mark: Mark | null;
}

interface TypedAs {
  /** The reading's unit, canonical: a bare number takes it, prefix and all. */
  readonly unit: string;
  /** Whether `none` is a value of this reading. */
  readonly allowNone: boolean;
}

const longest = 64;

/** Reads what is typed at the bench: `25,2M`, `4k7`, `850 mVpp`, `48..52 MHz`, `OL`, `25.2 MHz wanders`.
 *  Total: every text is either taken, or refused with texts that would be taken. */
export function readTyped(typed: string, { unit, allowNone }: TypedAs): Taken<TypedQuantity> {
  const wanted = storedUnit(unit);
  const taken = typed.length > longest ? tooLong(typed) : readMarked(tidy(typed), wanted, allowNone);
  if (taken.ok) return taken;
  const { text, offers } = taken.refusal;
  const sound = offers.filter((offer) => readMarked(offer, wanted, allowNone).ok);
  return refuse(text, sound.length > 0 ? sound : [`1 ${wanted.text}`.trim()]);
}

function readMarked(whole: string, wanted: Unit, allowNone: boolean): Taken<TypedQuantity> {
  const { text, mark } = splitMark(whole);
  if (mark !== null && text === '') {
    const offer = `1 ${wanted.text} ${mark}`;
    return refuse(`"${whole}" says how a value behaves: type the value before it`, [offer]);
  }
  const taken = readValue(text, wanted, allowNone);
  if (taken.ok) return { ok: true, value: { ...taken.value, mark } };
  if (mark === null) return taken;
  const second = splitMark(text);
  if (second.mark === null)
    return refuse(
      taken.refusal.text,
      taken.refusal.offers.map((offer) => `${offer} ${mark}`),
    );
  const offers = [`${second.text} ${second.mark}`, `${second.text} ${mark}`];
  return refuse(`"${whole}" says in two ways how the value behaves, and one is kept`, offers);
}

const tooLong = (typed: string): Taken<never> =>
  refuse(`This is ${typed.length} characters long, and a value has at most ${longest}`, []);

const refuse = (text: string, offers: readonly string[]): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
