import type Fraction from 'fraction.js';
import { evaluateFormula } from '../formula/index.ts';
import type { Formula } from '../model/formula.ts';
import type { Reading } from '../model/reading.ts';
import { fromStored } from '../quantity/index.ts';
import { expectedText, observationText } from '../scale/index.ts';
import { derivedNow } from './derived-now.ts';
import type { Known } from './known.ts';
import { standing } from './proof-readings.ts';
import { nameHere } from './reading-here.ts';
import { latest, type Session } from './session.ts';

/** A derived reading out of normal. */
export interface Finding {
  readonly reading: Reading;
  readonly known: Known;
  /** The words that it is computed from. */
  readonly from: readonly Known[];
  /** `Three readings show 0.63 of what they should (spread 1 %)`. No final full stop. */
  readonly text: string;
}

/** What the readings say together, what is computed from other findings after them. */
export function findings(session: Session): readonly Finding[] {
  return session.loaded.derived.flatMap((reading) => {
    const known = latest(session, reading.id);
    if (known === null || known.stale || standing(session, reading.id, known) !== 'wrong') return [];
    const { from } = derivedNow(session, reading);
    return [
      {
        reading,
        known,
        from,
        text: commonFactor(session, reading, from) ?? plainly(session, reading, known),
      },
    ];
  });
}

/** `Bus against marking: 1.26, should be 0.98 .. 1.02` */
function plainly(session: Session, reading: Reading, { observation, bands }: Known): string {
  const value = observation === null ? bands.join(' or ') : observationText(observation);
  const expected = expectedText(reading, session);
  return `${nameHere(session, reading.id)}: ${value}${expected === '' ? '' : `, should be ${expected}`}`;
}

const counts = ['', '', 'Two', 'Three', 'Four', 'Five', 'Six', 'Seven', 'Eight', 'Nine', 'Ten'];

/** Several readings that are wrong by one ratio; null for any other formula, and where a value is not exactly known. */
function commonFactor(session: Session, { from }: Reading, words: readonly Known[]): string | null {
  if (from?.kind !== 'call' || from.name !== 'factor') return null;
  const exactNow = (formula: Formula): Fraction | null => {
    const found = evaluateFormula(formula, (name) => valueNow(session, words, name));
    return found.kind === 'value' ? found.value : null;
  };
  const factor = exactNow(from);
  const spread = exactNow({ ...from, name: 'spread' });
  const count = from.arguments.filter((each) => (exactNow(each)?.n ?? 0n) !== 0n).length;
  if (factor === null || spread === null || count < 2) return null;
  const percent = Number((spread.valueOf() * 100).toPrecision(2));
  const share = Number(factor.valueOf().toPrecision(2));
  return `${counts[count] ?? count} readings show ${share} of what they should (spread ${percent} %)`;
}

function valueNow(session: Session, words: readonly Known[], name: string): Fraction | null {
  const setting = session.settings.get(name);
  if (setting !== undefined && setting !== null && typeof setting !== 'string') return fromStored(setting);
  const understood = words.find(({ reading }) => reading === name)?.observation?.understood;
  return understood?.kind === 'quantity' ? fromStored(understood.quantity) : null;
}
