import { settlerWords } from '../../doubt/index.ts';
import { wrap } from '../../prose/plain-text.ts';
import { printQuantity } from '../../quantity/index.ts';
import { latest, type Question, type Session, type Unsettled } from '../../run/index.ts';
import { observationText } from '../../scale/index.ts';

/** Where the readings leave more than one way: why, what would settle it, and the ways. */
export function tooCloseLines(
  session: Session,
  { ways, unsettled }: Extract<Question, { readonly ask: 'too-close' }>,
  width: number,
): readonly string[] {
  const [one, ...others] = unsettled;
  const again = one === undefined || others.length > 0 ? 'retake NAME = value' : 'Type the value once more';
  return [
    ...unsettled.map((each) => wrap(openText(session, each), width)),
    [
      `${again}, or back, or go on as if:`,
      ...ways.map(
        ({ target, bands }) =>
          `  as if ${target}   (${Object.entries(bands)
            .filter(([name]) => session.position.taken.has(name))
            .map(([name, band]) => `${name} ${band}`)
            .join(', ')})`,
      ),
    ].join('\n'),
  ];
}

/** `5 V at the slots: 4.76 V ± 43.8 mV (bench meter), so low or good. The 6 V range would settle it.` */
function openText(session: Session, { reading, bands, by }: Unsettled): string {
  const seen = latest(session, reading.id)?.observation ?? null;
  const doubt = seen?.doubt ? ` ± ${printQuantity(seen.doubt.plusMinus)} (${seen.doubt.instrument})` : '';
  const value = seen === null ? 'not read' : `${observationText(seen)}${doubt}`;
  const open = `TOO CLOSE TO CALL: ${reading.is}: ${value}, so ${bands.join(' or ')}.`;
  return by.length === 0 ? open : `${open} ${listed(by.map(settlerWords))} would settle it.`;
}

function listed(words: readonly string[]): string {
  const text = words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')}, or ${words.at(-1)}`;
  return text.charAt(0).toUpperCase() + text.slice(1);
}
