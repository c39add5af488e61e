import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Fault } from '../../engine/model/fault.ts';
import { printQuantity } from '../../engine/quantity/index.ts';
import {
  type Answer,
  apply,
  entryFor,
  latest,
  openSession,
  questionOf,
  type Session,
} from '../../engine/run/index.ts';
import { type Shown, shownBands } from '../../engine/suspects/shown-bands.ts';
import { typedFor } from './typed-for.ts';

/** Where a walk on a board with one hidden fault ended. */
export interface Arrival {
  readonly arrived: boolean;
  readonly session: Session;
}

const longest = 400;
const at = '2026-03-01T09:00:00.000+01:00';

/** Walks a tree as a board with `fault` answers: each reading in the band that the fault shows, `choose` where
 *  it can show several, until a section of that fault, a stop, or a question with no answer.
 *  @param settings option names by setting; others take their usual value */
export function walkFault(
  tree: CompiledTree,
  fault: Fault,
  choose: (reading: string, bands: readonly string[]) => string,
  settings: Readonly<Record<string, string>> = {},
): Arrival {
  const shown = shownBands(tree, fault);
  const said = new Map<string, string>();
  const bandOf = (reading: string): string => {
    const bands = (shown.get(reading) as Shown).shares
      .filter(({ share }) => share > 0)
      .map(({ band }) => band);
    const band = said.get(reading) ?? (bands.length === 1 ? (bands[0] as string) : choose(reading, bands));
    said.set(reading, band);
    return band;
  };
  let session = openSession(tree);
  for (let step = 0; step < longest; step += 1) {
    const answer = answerTo(session, bandOf, settings);
    if (answer === null) break;
    const entry = entryFor(session, answer, at);
    if (!entry.ok) throw new Error(`${fault.id}: ${entry.refusal.text}`);
    session = apply(session, entry.value);
  }
  const { section } = session.position;
  const arrived = section?.kind === 'fault' && section.remedies.some((remedy) => remedy.fault === fault.id);
  return { arrived, session };
}

function answerTo(
  session: Session,
  bandOf: (reading: string) => string,
  settings: Readonly<Record<string, string>>,
): Answer | null {
  const question = questionOf(session);
  switch (question.ask) {
    case 'opening':
      return { say: 'open', board: 'hidden fault', owner: '', story: '' };
    case 'setting': {
      const { setting } = question;
      const usual = setting.kind === 'options' ? setting.usual : null;
      const typed = settings[setting.id] ?? usual ?? usualText(session, setting.id);
      return { say: 'setting', setting: setting.id, typed, how: 'noted' };
    }
    case 'symptom':
      return { say: 'symptom', same: true };
    case 'acknowledgement':
      return { say: 'acknowledge' };
    case 'reading': {
      if (question.purpose === 'proof') return null;
      const typed = typedFor(session, question.reading, bandOf(question.reading.id));
      return { say: 'value', reading: null, typed, board: 'failing' };
    }
    case 'arrange':
      return { say: 'arrange', conditions: null };
    case 'held': {
      // What was read and still holds the walk will hold it for ever on this board.
      const [first] = question.lacking.filter(({ known }) => known === null || known.given);
      const reading = first?.take.find(({ id }) => latest(session, id) === null);
      if (reading === undefined) return null;
      const typed = typedFor(session, reading, bandOf(reading.id));
      return { say: 'value', reading: reading.id, typed, board: 'failing' };
    }
    case 'task':
    case 'call':
      return { say: 'done' };
    default:
      return null;
  }
}

function usualText(session: Session, id: string): string {
  const setting = session.loaded.settings.get(id);
  if (setting?.kind !== 'quantity' || setting.usual === null)
    throw new Error(`expected "${id}" to have a usual value`);
  return printQuantity(setting.usual);
}

/** Every choice of one option for each setting that has options. */
export function everySetting(tree: CompiledTree): readonly Readonly<Record<string, string>>[] {
  return tree.settings
    .filter((setting) => setting.kind === 'options')
    .reduce<Record<string, string>[]>(
      (all, { id, options }) => all.flatMap((one) => options.map(({ name }) => ({ ...one, [id]: name }))),
      [{}],
    );
}

/** One way to choose among bands for each walk, until every way was walked or `most` of them. Like a counter
 *  whose digits are the readings that were asked with more than one band: the last one turns fastest. */
export function* allChoices(most: number): Generator<(reading: string, bands: readonly string[]) => string> {
  const digits = new Map<string, { at: number; readonly of: number }>();
  for (let count = 0; count < most; count += 1) {
    const met: string[] = [];
    yield (reading, bands) => {
      met.push(reading);
      const digit = digits.get(reading) ?? { at: 0, of: bands.length };
      digits.set(reading, digit);
      return bands[digit.at] as string;
    };
    for (const reading of met.reverse()) {
      const digit = digits.get(reading) as { at: number; readonly of: number };
      digit.at += 1;
      if (digit.at < digit.of) break;
      digits.delete(reading);
    }
    if (digits.size === 0) return;
  }
}
