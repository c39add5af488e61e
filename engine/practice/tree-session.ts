import { autoAnswer } from '../cases/auto-answer.ts';
import { printInstrument } from '../doubt/index.ts';
import type { TaskSection } from '../model/section.ts';
import {
  type Answer,
  apply,
  entryFor,
  latest,
  openSession,
  type Question,
  questionOf,
  type Session,
} from '../run/index.ts';
import { settingText } from '../scale/index.ts';
import type { Drill, DrillEvent } from './drill.ts';
import { groundOf } from './ground-of.ts';

/** Where a walk along the tree stands that reads what the trainee read. */
export interface Followed {
  readonly session: Session;
  /** What it waits for. */
  readonly question: Question;
  /** The reading that it asks for and the trainee has not taken; null where it waits for something else. */
  readonly wants: string | null;
  /** Tasks that were done on the way, in their order. */
  readonly worked: readonly TaskSection[];
}

const at = '2000-01-01T12:00:00.000+00:00';

/** More steps than this are a walk in circles. */
const longest = 600;

const known = new WeakMap<Drill, Followed>();

/** A session beside the drill, with the same board, the same readings, and everything passed that goes without saying. */
export function followed(drill: Drill): Followed {
  const before = known.get(drill);
  if (before !== undefined) return before;
  const made = follow(drill);
  known.set(drill, made);
  return made;
}

function follow(drill: Drill): Followed {
  const typed = Object.fromEntries(
    [...groundOf(drill).board.present.settings].flatMap(([id, value]) =>
      value === null ? [] : [[id, settingText(value)]],
    ),
  );
  let session = equipped(drill, openSession(drill.tree, { board: drill.board, laterTrees: [] }));
  const worked: TaskSection[] = [];
  const readings = new Asked(drill);
  for (let step = 0; step < longest; step += 1) {
    const question = questionOf(session);
    const answer = autoAnswer(session, typed, null) ?? readings.answerTo(session, question);
    const entry = answer && entryFor(session, answer, at);
    if (!entry?.ok) return { session, question, wants: readings.wanted(session, question), worked };
    if (question.ask === 'task') worked.push(question.section);
    session = apply(session, entry.value);
  }
  return { session, question: questionOf(session), wants: null, worked };
}

/** Opened, with what is at the bench and what was read on a known-good board. */
function equipped(drill: Drill, start: Session): Session {
  const { instruments, lacking, rule } = drill.equipment;
  const twins = drill.events.flatMap((event): readonly Answer[] =>
    event.kind === 'twin' ? [{ say: 'twin', reading: event.reading, typed: event.typed }] : [],
  );
  const answers: readonly Answer[] = [
    { say: 'open', board: '', owner: '', story: '' },
    { say: 'equip', instruments: instruments.map(printInstrument), lacking, rule },
    ...twins,
  ];
  return answers.reduce((session, answer) => {
    const entry = entryFor(session, answer, at);
    return entry.ok ? apply(session, entry.value) : session;
  }, start);
}

type Measured = Extract<DrillEvent, { readonly kind: 'measured' }>;

/** Answers with what the drill measured. A section that asks for a reading once more wants it taken once more. */
class Asked {
  readonly #drill: Drill;
  readonly #measured: ReadonlyMap<string, readonly Measured[]>;
  readonly #times = new Map<string, number>();

  constructor(drill: Drill) {
    this.#drill = drill;
    const measured = new Map<string, Measured[]>();
    for (const event of drill.events) {
      if (event.kind !== 'measured') continue;
      measured.set(event.reading, [...(measured.get(event.reading) ?? []), event]);
    }
    this.#measured = measured;
  }

  answerTo(session: Session, question: Question): Answer | null {
    switch (question.ask) {
      case 'reading':
        return question.purpose === 'proof'
          ? this.#proof(question.reading.id)
          : this.#value(question.section.id, question.reading.id, null, question.lacks);
      case 'held': {
        const id = this.#heldBy(session, question);
        if (id !== null) return this.#value(question.section.id, id, id, null);
        return { say: 'override', why: 'practice' };
      }
      case 'too-close':
        return { say: 'assume', target: question.ways[0]?.target ?? '' };
      case 'remedy':
        return this.#named(question.fault.id) ? { say: 'remedied', which: '', parts: [] } : null;
      default:
        return null;
    }
  }

  /** The reading that is asked for and was not measured (so often). */
  wanted(session: Session, question: Question): string | null {
    if (question.ask === 'reading' && question.purpose === 'check') return question.reading.id;
    return question.ask === 'held' ? this.#heldBy(session, question) : null;
  }

  #value(section: string, id: string, reading: string | null, lacks: string | null): Answer | null {
    if (lacks !== null) return { say: 'cannot-read', why: '' };
    const taken = this.#measured.get(id) ?? [];
    const key = `${section} ${id}`;
    const times = this.#times.get(key) ?? 0;
    const last = taken.at(-1);
    if (last === undefined || taken.length <= times) return null;
    this.#times.set(key, times + 1);
    return { say: 'value', reading, typed: last.typed, board: last.board };
  }

  #heldBy(session: Session, { lacking }: Extract<Question, { readonly ask: 'held' }>): string | null {
    const [first] = lacking.filter(({ known: word }) => word === null || word.given);
    return first?.take.find(({ id }) => latest(session, id) === null)?.id ?? null;
  }

  #named = (fault: string): boolean =>
    this.#drill.events.some((event) => event.kind === 'named' && event.fault === fault);

  #proof(id: string): Answer | null {
    const proofs = this.#drill.events.flatMap((event) => (event.kind === 'named' ? event.proof : []));
    const typed =
      proofs.findLast(({ reading }) => reading === id)?.typed ?? this.#measured.get(id)?.at(-1)?.typed;
    const text = typed ?? groundOf(this.#drill).board.proven(id);
    return text === '' ? null : { say: 'value', reading: null, typed: text, board: 'failing' };
  }
}
