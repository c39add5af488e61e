import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { BoardState, Entry } from '../../engine/model/entry.ts';
import type { Refusal } from '../../engine/model/refusal.ts';
import {
  type Answer,
  apply,
  entryFor,
  type Question,
  questionOf,
  replay,
  type Session,
} from '../../engine/run/index.ts';
import type { Ports } from '../ports/ports.ts';
import type { StoreProblem } from '../ports/stored.ts';
import { bringTree } from './bring-tree.ts';
import type { DialogName } from './dialog-name.ts';
import { keptEquipment, sameEquipment } from './kept-equipment.ts';
import { newerTree } from './newer-tree.ts';
import { createRanking, type Ranking } from './ranking.ts';
import { storeProblemWords } from './store-problem-words.ts';
import { summaryOf } from './summary-of.ts';

/** Something to tell the technician outside of the walk. */
interface Notice {
  readonly tone: 'told' | 'refused';
  readonly text: string;
  /** Texts that would be understood. */
  readonly offers: readonly string[];
  /** The job can be saved as a file: the store did not take the entry. */
  readonly offerFile: boolean;
}

type JobState =
  | { readonly state: 'loading' }
  | { readonly state: 'failed'; readonly why: string }
  | { readonly state: 'ready'; readonly session: Session };

/** One job while it is on the screen. */
export interface OpenJob {
  readonly id: string;
  readonly state: ReadonlySignal<JobState>;
  /** What stands in the field. It survives everything but being entered. */
  readonly typed: Signal<string>;
  /** Whether the board fails just now; asked only where a fault comes and goes. */
  readonly board: Signal<BoardState>;
  readonly notice: Signal<Notice | null>;
  readonly dialog: Signal<DialogName | null>;
  /** Whether the last entry was made on an earlier day, so that the symptom is asked for again. */
  readonly askAgain: ReadonlySignal<boolean>;
  /** The tree has been changed since the job began; put away, or accepted, it is false again. */
  readonly newerThere: Signal<boolean>;
  /** This bench has other instruments than the job was walked with so far. */
  readonly otherBench: Signal<boolean>;
  readonly ranking: Ranking;
  /** An entry is on its way to the store. */
  readonly writing: ReadonlySignal<boolean>;
  load(): Promise<void>;
  /** Stores what the answer makes, then moves on. False: nothing was entered, and `notice` says why. */
  answer(answer: Answer): Promise<boolean>;
  dispose(): void;
}

const notice = (tone: Notice['tone'], text: string, more: Partial<Notice> = {}): Notice => ({
  tone,
  text,
  offers: [],
  offerFile: false,
  ...more,
});

const movedElsewhere = 'Another window went on with this job. It is shown as it stands now; nothing was lost';

const keepFile = '. The job so far can be saved as a file, and what was typed is still in the field';

export function createOpenJob(ports: Ports, id: string): OpenJob {
  const state = signal<JobState>({ state: 'loading' });
  const typed = signal('');
  const board = signal<BoardState>('failing');
  const said = signal<Notice | null>(null);
  const dialog = signal<DialogName | null>(null);
  const writing = signal(false);
  const newerThere = signal(false);
  const otherBench = signal(false);
  const walked = computed(() => (state.value.state === 'ready' ? state.value.session : null));
  const ranking = createRanking(walked, ports);

  /** Moves the screen on. What is typed stays only as long as the same thing is asked for; whether the board fails or runs
   *  stays as it was last said here, until an entry says otherwise. */
  const show = (session: Session, entered: boolean) =>
    batch(() => {
      const last = state.value.state === 'ready' ? state.value.session : null;
      if (entered || (last !== null && askedOf(last) !== askedOf(session))) typed.value = '';
      if (last?.boardState !== session.boardState) board.value = session.boardState;
      state.value = { state: 'ready', session };
    });

  /** What this bench has that the job does not know of is offered once it is on the screen. */
  const taken = async (session: Session) => {
    const first = state.value.state !== 'ready';
    show(session, false);
    if (!first || session.closed !== null) return;
    otherBench.value = !sameEquipment(session.equipment, keptEquipment(ports.settings));
    newerThere.value = (await newerTree(ports.trees, session)) !== null;
  };

  const load = async () => {
    const job = await ports.store.load(id);
    if (job.ok) await taken(replay(job.value.tree, job.value.entries, job.value));
    else if (state.value.state !== 'ready')
      state.value = { state: 'failed', why: storeProblemWords(job.problem) };
  };

  /** Shows the job as another window left it; says what stood in the field where it had to go. */
  const reload = async (): Promise<string> => {
    const text = typed.value.trim();
    await load();
    return text !== '' && typed.value === '' ? `. Typed here was "${text}"` : '';
  };

  const refuseStore = async (problem: StoreProblem) => {
    const movedOn = problem.kind === 'moved-on';
    const words = storeProblemWords(problem) + (movedOn ? await reload() : keepFile);
    said.value = notice('refused', words, { offerFile: !movedOn });
    return false;
  };

  const enter = async (session: Session, entry: Entry, fromField: boolean): Promise<boolean> => {
    const next = apply(session, entry);
    const held = session.entries.length;
    const stored = await ports.store.append(id, held, [entry], summaryOf(id, next));
    if (!stored.ok) return refuseStore(stored.problem);
    show(next, fromField);
    ports.windows.tell({ job: id, entries: held + 1 });
    return true;
  };

  const refuse = (given: Answer, { text, offers }: Refusal): false => {
    const tone = given.say === 'back' ? 'told' : 'refused';
    said.value = notice(tone, text, { offers: given.say === 'value' ? offers : [] });
    return false;
  };

  const give = async (session: Session, given: Answer): Promise<boolean> => {
    const ready = await bringTree(ports, id, session, given);
    if (!ready.ok) return refuse(given, ready.refusal);
    const entry = entryFor(ready.value, given, ports.clock.now());
    if (!entry.ok) return refuse(given, entry.refusal);
    said.value = null;
    return enter(ready.value, entry.value, given.say === 'value');
  };

  const answer = async (given: Answer): Promise<boolean> => {
    const now = state.value;
    if (now.state !== 'ready' || writing.value) return false;
    writing.value = true;
    try {
      return await give(now.session, given);
    } finally {
      writing.value = false;
    }
  };

  const stop = ports.windows.listen(async ({ job, entries }) => {
    const now = state.value;
    if (job !== id || now.state !== 'ready' || writing.value || entries <= now.session.entries.length) return;
    said.value = notice('told', movedElsewhere + (await reload()));
  });

  return {
    id,
    state,
    typed,
    board,
    notice: said,
    dialog,
    newerThere,
    otherBench,
    ranking,
    writing,
    askAgain: computed(
      () => state.value.state === 'ready' && fromEarlierDay(state.value.session, ports.clock.now()),
    ),
    load,
    answer,
    dispose() {
      stop();
      ranking.dispose();
    },
  };
}

const dayOf = (at: string): string => at.slice(0, 10);

function fromEarlierDay(session: Session, now: string): boolean {
  const last = session.entries.at(-1);
  const asked: Question['ask'] = questionOf(session).ask;
  return last !== undefined && asked !== 'nothing' && asked !== 'opening' && dayOf(last.at) !== dayOf(now);
}

/** What the field is for; null where there is none. */
function askedOf(session: Session): string | null {
  const question = questionOf(session);
  if (question.ask === 'reading') return `reading ${question.reading.id}`;
  return question.ask === 'setting' ? `setting ${question.setting.id}` : null;
}
