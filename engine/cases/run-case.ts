import type { Case, CaseEnd } from '../model/case.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Job } from '../model/job.ts';
import {
  type Answer,
  apply,
  entryFor,
  openSession,
  parseAnswer,
  pathOf,
  questionOf,
  type Session,
} from '../run/index.ts';
import { autoAnswer } from './auto-answer.ts';
import type { CaseProblem, CaseResult } from './case-result.ts';
import { partingOf } from './parting-of.ts';

/** The moment at which everything in a case happens: a case has no clock. */
const at = '2000-01-01T12:00:00.000+00:00';

/** More steps than this between two answers of a case are a walk in circles. */
const mostSteps = 500;

/** Walks a tree by the answers of a case, and says whether it led where it must. What goes without saying (the
 *  opening, warnings, tasks) is passed by itself.
 *  @param parts the board sheet, and the trees that the job may be handed over to */
export function runCase(
  { title, settings, answers, leadsTo }: Case,
  tree: CompiledTree,
  parts: Pick<Job, 'board' | 'laterTrees'>,
): CaseResult {
  let session = openSession(tree, parts);
  for (const [index, text] of answers.entries()) {
    session = passTo(session, settings, text);
    const next = taken(session, text);
    if ('why' in next) {
      const problem = { kind: 'refused', step: index + 1, answer: text, why: next.why } as const;
      return { title, path: pathOf(session.position), problem };
    }
    session = next.session;
  }
  session = passTo(session, settings, null, (now) => standsAt(now, leadsTo));
  const path = pathOf(session.position);
  return { title, path, problem: standsAt(session, leadsTo) ? null : elsewhere(session, leadsTo) };
}

function taken(session: Session, text: string): { session: Session } | { why: string } {
  const parsed = parseAnswer(session, text);
  const entry = parsed.ok ? entryFor(session, parsed.value, at) : parsed;
  if (entry.ok) return { session: apply(session, entry.value) };
  const { text: why, offers } = entry.refusal;
  return { why: offers.length === 0 ? why : `${why}. It takes: ${offers.join(' | ')}` };
}

/** Goes on by what goes without saying, up to the step at which `text` is wanted. */
function passTo(
  session: Session,
  settings: Case['settings'],
  text: string | null,
  isThere: (session: Session) => boolean = () => false,
): Session {
  let now = session;
  for (let step = 0; step < mostSteps && !isThere(now); step += 1) {
    const answer = autoAnswer(now, settings, text === null ? null : parsedOrNull(now, text));
    const entry = answer && entryFor(now, answer, at);
    if (!entry?.ok) break;
    now = apply(now, entry.value);
  }
  return now;
}

function parsedOrNull(session: Session, text: string): Answer | null {
  const parsed = parseAnswer(session, text);
  return parsed.ok ? parsed.value : null;
}

function standsAt({ position, loaded }: Session, end: CaseEnd): boolean {
  if (end.kind === 'mended') return position.section === null;
  return position.section?.id === end.section && loaded.tree.id === end.tree;
}

function elsewhere(session: Session, end: CaseEnd): CaseProblem {
  const { section } = session.position;
  const question = questionOf(session);
  const { tree } = session.loaded;
  const expected =
    end.kind === 'mended'
      ? 'a mended board'
      : (session.loaded.sections.get(end.section)?.title ?? end.section);
  return {
    kind: 'elsewhere',
    expected,
    stands: section?.title ?? 'a mended board',
    asks: question.ask === 'reading' ? question.reading.id : null,
    parted: end.kind === 'mended' ? null : partingOf(tree.sections, pathOf(session.position), end.section),
  };
}
