import type { CompiledBoard } from '../model/compiled-board.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import { type Answer, apply, entryFor, latest, openSession, questionOf, type Session } from '../run/index.ts';
import { settingText } from '../scale/index.ts';
import { type Alike, type Drawn, type Draws, drawsOf } from '../suspects/draws.ts';
import { possibleUsually } from '../suspects/possible-usually.ts';
import { autoAnswer, type TypedSettings } from './auto-answer.ts';
import { typedFor } from './typed-for.ts';

/** A walk up to one of its steps. */
interface Walk {
  readonly session: Session;
  /** What the board has shown so far. */
  readonly drawn: Drawn;
  readonly steps: number;
}

/** What a board is asked, and by which name where that has to be said. */
interface Asked {
  readonly reading: Reading;
  readonly named: string | null;
}

/** A walk goes on to where the board can answer in several ways, or to its end. */
export type Way =
  | {
      readonly kind: 'fork';
      readonly reading: string;
      readonly ways: readonly (() => Way)[];
      /** How likely each is; they add up to 1. */
      readonly shares: readonly number[];
    }
  | {
      readonly kind: 'end';
      readonly session: Session;
      readonly refused: string | null;
      /** What came out on the way. */
      readonly drawn: Drawn;
    };

/** How a board begins to answer. */
export interface Begun {
  /** What has come out already. */
  readonly drawn?: Drawn;
  /** Bands that need not be told apart. */
  readonly alike?: Alike;
}

const longest = 400;
const at = '2000-01-01T12:00:00.000+00:00';

/** A board with one fault, answering whoever walks a tree on it: the same whenever it is asked the same. */
export class FaultBoard {
  private readonly draws: Draws;
  private readonly settings: TypedSettings;
  private readonly start: Walk;

  /** @param settings what is typed for them; what is not named has the value that the fault sets, or the usual one */
  constructor(
    tree: CompiledTree,
    fault: Fault,
    settings: TypedSettings = {},
    board: CompiledBoard | null = null,
    { drawn = new Map(), alike }: Begun = {},
  ) {
    this.draws = drawsOf(tree, fault, possibleUsually(tree, fault), alike);
    this.settings = { ...settings, ...typedSets(fault) };
    this.start = { session: openSession(tree, { board, laterTrees: [] }), drawn, steps: 0 };
  }

  /** The walk from the symptom. */
  walk(): Way {
    return this.on(this.start);
  }

  private on(from: Walk): Way {
    let walk = from;
    while (walk.steps < longest) {
      const here = walk;
      const auto = autoAnswer(here.session, this.settings, null);
      const asked = auto === null ? askedOf(here.session) : null;
      const ways = asked === null ? [] : this.draws.draw(asked.reading.id, here.drawn).filter(isMet);
      if (asked !== null && ways.length > 1) {
        const along = ways.map(({ drawn }) => (): Way => {
          const next = this.answered({ ...here, drawn }, asked);
          return 'kind' in next ? next : this.on(next);
        });
        return {
          kind: 'fork',
          reading: asked.reading.id,
          ways: along,
          shares: ways.map(({ share }) => share),
        };
      }
      if (auto === null && asked === null) break;
      const next =
        asked === null
          ? this.taken(here, auto as Answer)
          : this.answered({ ...here, drawn: ways[0]?.drawn ?? here.drawn }, asked);
      if ('kind' in next) return next;
      walk = next;
    }
    return { kind: 'end', session: walk.session, refused: null, drawn: walk.drawn };
  }

  private answered(walk: Walk, { reading, named }: Asked): Walk | Way {
    const typed = typedFor(walk.session, reading, this.draws.bandOf(reading.id, walk.drawn) ?? '');
    return this.taken(walk, { say: 'value', reading: named, typed, board: 'failing' });
  }

  private taken({ session, drawn, steps }: Walk, answer: Answer): Walk | Way {
    const entry = entryFor(session, answer, at);
    if (!entry.ok) return { kind: 'end', session, refused: entry.refusal.text, drawn };
    return { session: apply(session, entry.value), drawn, steps: steps + 1 };
  }
}

const isMet = ({ share }: { readonly share: number }): boolean => share > 0;

const typedSets = ({ sets }: Fault): TypedSettings =>
  Object.fromEntries(Object.entries(sets).map(([setting, value]) => [setting, settingText(value)]));

function askedOf(session: Session): Asked | null {
  const question = questionOf(session);
  if (question.ask === 'reading' && question.purpose === 'check')
    return { reading: question.reading, named: null };
  if (question.ask !== 'held') return null;
  // What was read and still holds the walk will hold it for ever on this board.
  const [first] = question.lacking.filter(({ known }) => known === null || known.given);
  const reading = first?.take.find(({ id }) => latest(session, id) === null);
  return reading === undefined ? null : { reading, named: reading.id };
}
