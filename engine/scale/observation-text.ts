import type { Member, Observation, Understood } from '../model/observation.ts';
import { inRoundFigures, printQuantity } from '../quantity/index.ts';
import { beepText } from './beep-text.ts';

type Texts = {
  readonly [Kind in Understood['kind']]: (understood: Extract<Understood, { kind: Kind }>) => string;
};

const texts: Texts = {
  quantity: ({ quantity }) => printQuantity(quantity),
  interval: ({ from, to, closed, unit }) => {
    const print = (value: string): string => printQuantity({ value, unit });
    if (from !== null && to !== null) return `${print(from)} .. ${print(to)}`;
    if (from !== null) return `${closed ? '≥' : '>'} ${print(from)}`;
    return to === null ? 'not known' : `${closed ? '≤' : '<'} ${print(to)}`;
  },
  option: ({ option }) => option,
  code: ({ code }) => code,
  beeps: ({ pattern }) => beepText(pattern),
  tries: ({ good, of }) => `${good} of ${of}`,
  each: ({ members, normal }) => eachText(members, normal),
  overload: () => 'OL',
};

/** An observation as it is shown back: `25.2 MHz`, `48 MHz .. 52 MHz`, `steady`, `3 of 10`, `A3 stuck, 7 good`. Its mark is
 *  not part of it. What was computed is shown in round figures: nobody measured the others. */
export function observationText({
  understood,
  typed,
}: Pick<Observation, 'understood'> & Partial<Pick<Observation, 'typed'>>): string {
  const isComputed = typed === '' && understood.kind === 'quantity';
  return isComputed
    ? printQuantity(inRoundFigures(understood.quantity))
    : texts[understood.kind](understood as never);
}

/** Whoever is out of normal, or may be, by name; the others counted. */
function eachText(members: readonly Member[], normal: readonly string[]): string {
  const isNormal = ({ bands }: Member): boolean => bands.every((band) => normal.includes(band));
  const odd = members.filter((member) => !isNormal(member));
  const shown = new Map<string, string[]>();
  for (const member of odd) {
    const text = memberText(member);
    shown.set(text, [...(shown.get(text) ?? []), member.name]);
  }
  const named = [...shown].map(([text, names]) =>
    names.length === members.length && names.length > 1 ? `all ${text}` : `${names.join(', ')} ${text}`,
  );
  const rest = members.length - odd.length;
  const good = [...new Set(members.filter(isNormal).flatMap(({ bands }) => bands))].join(' or ');
  if (rest > 0) named.push(odd.length === 0 ? `all ${good}` : `${rest} ${good}`);
  return named.join(named.length > 2 ? '; ' : ', ');
}

/** `stuck`; a value with its band: `4.2 V (low)`. */
function memberText({ understood, bands }: Member): string {
  const text = observationText({ understood });
  const band = bands.join(' or ');
  return text === band ? text : `${text} (${band})`;
}
