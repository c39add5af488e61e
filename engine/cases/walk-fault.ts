import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import { type Answer, apply, entryFor, latest, openSession, questionOf, type Session } from '../run/index.ts';
import { settingText } from '../scale/index.ts';
import { type Drawn, drawsOf } from '../suspects/draws.ts';
import { possibleUsually } from '../suspects/possible-usually.ts';
import type { Choose } from './all-choices.ts';
import { autoAnswer, type TypedSettings } from './auto-answer.ts';
import { typedFor } from './typed-for.ts';

/** Where a walk on a board with one fault ended. */
export interface Arrival {
  readonly arrived: boolean;
  readonly session: Session;
  /** Why an answer made for this board was not taken; null where all were. */
  readonly refused: string | null;
}

const longest = 400;
const at = '2000-01-01T12:00:00.000+00:00';

/** Walks a tree as a board with `fault` answers: each reading in a band that the fault shows, `choose` where it can show
 *  several, until a section of that fault, a stop, or a question with no answer.
 *  @param settings what is typed for them; what is not named has the value that the fault sets, or the usual one */
export function walkFault(
  tree: CompiledTree,
  fault: Fault,
  choose: Choose,
  settings: TypedSettings = {},
  board: CompiledBoard | null = null,
): Arrival {
  const answers = new Answers(tree, fault, choose);
  const typed = { ...settings, ...typedSets(fault) };
  let session = openSession(tree, { board, laterTrees: [] });
  let refused: string | null = null;
  for (let step = 0; step < longest; step += 1) {
    const answer = autoAnswer(session, typed, null) ?? answers.to(session);
    if (answer === null) break;
    const entry = entryFor(session, answer, at);
    if (!entry.ok) {
      refused = entry.refusal.text;
      break;
    }
    session = apply(session, entry.value);
  }
  const { section } = session.position;
  const arrived = section?.kind === 'fault' && section.remedies.some((remedy) => remedy.fault === fault.id);
  return { arrived, session, refused };
}

const typedSets = ({ sets }: Fault): TypedSettings =>
  Object.fromEntries(Object.entries(sets).map(([setting, value]) => [setting, settingText(value)]));

/** What the board answers: the same whenever it is asked the same. */
class Answers {
  private drawn: Drawn = new Map();
  private readonly draws: ReturnType<typeof drawsOf>;
  private readonly choose: Choose;

  constructor(tree: CompiledTree, fault: Fault, choose: Choose) {
    this.draws = drawsOf(tree, fault, possibleUsually(tree, fault));
    this.choose = choose;
  }

  to(session: Session): Answer | null {
    const question = questionOf(session);
    if (question.ask === 'reading' && question.purpose === 'check')
      return this.value(session, question.reading, null);
    if (question.ask !== 'held') return null;
    // What was read and still holds the walk will hold it for ever on this board.
    const [first] = question.lacking.filter(({ known }) => known === null || known.given);
    const reading = first?.take.find(({ id }) => latest(session, id) === null);
    return reading === undefined ? null : this.value(session, reading, reading.id);
  }

  private value(session: Session, reading: Parameters<typeof typedFor>[1], named: string | null): Answer {
    const typed = typedFor(session, reading, this.bandOf(reading.id));
    return { say: 'value', reading: named, typed, board: 'failing' };
  }

  private bandOf(reading: string): string {
    const ways = this.draws.draw(reading, this.drawn).filter(({ share }) => share > 0);
    const way = ways[ways.length > 1 ? this.choose(reading, ways.length) : 0];
    this.drawn = way?.drawn ?? this.drawn;
    return this.draws.bandOf(reading, this.drawn) ?? '';
  }
}
