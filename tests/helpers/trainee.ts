import { autoAnswer } from '../../engine/cases/auto-answer.ts';
import { typedFor } from '../../engine/cases/typed-for.ts';
import { faultShares } from '../../engine/figures/fault-shares.ts';
import { faultStart } from '../../engine/figures/fault-start.ts';
import { usualSettings } from '../../engine/figures/usual-settings.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { mends } from '../../engine/model/mends.ts';
import { arrangingOf, type Check, settled } from '../../engine/next/index.ts';
import { checksNow } from '../../engine/run/checks-now.ts';
import {
  type Answer,
  apply,
  entryFor,
  openSession,
  questionOf,
  type Session,
} from '../../engine/run/index.ts';
import { proposalsOf } from '../../engine/run/proposals-of.ts';
import { suspectsOf } from '../../engine/run/suspects-of.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import type { Draw, Draws } from '../../engine/suspects/draws.ts';

/** What the trainee came to, with one fault or on the average. */
export interface Learnt {
  /** Expected minutes until a section was named. */
  minutes: number;
  /** Expected checks. */
  checks: number;
  /** How likely the section that was named was the fault's own. */
  right: number;
  /** How likely nothing was left to propose before a section could be named. */
  stuck: number;
}

export interface Lesson extends Learnt {
  readonly faults: ReadonlyMap<string, Learnt & { readonly share: number }>;
  /** How likely it is to have come to a point too rare to follow. */
  leftOut: number;
  /** Points at which something was proposed or named. */
  points: number;
}

/** A point that some boards come to: those that have answered alike so far. */
interface Point {
  readonly session: Session;
  readonly minutes: number;
  readonly checks: number;
  /** By fault, the ways in which its boards can have come out, and how likely each is among all boards. */
  readonly boards: ReadonlyMap<string, readonly Draw[]>;
}

const at = '2000-01-01T12:00:00.000+00:00';

export interface LessonOptions {
  /** Points that fewer boards come to are not followed. */
  readonly rare?: number;
  /** The share from which a section can be named. */
  readonly enough?: number;
  /** Expected minutes along the tree, by fault. */
  readonly byTree: (fault: string) => number;
}

/** A trainee who takes what is proposed on every board that a tree knows, until a section can be named: one section's faults, or
 *  suspects that nothing tells apart, have the share `enough`. Boards do not slip. Exact, but for points that are rarer than `rare`: there the tree is walked
 *  from its beginning, so that the minutes are no less than they would be.
 */
export function lesson(tree: CompiledTree, { rare = 1e-5, enough = settled, byTree }: LessonOptions): Lesson {
  const shares = faultShares(tree, null);
  const draws = new Map<string, Draws>();
  const boards = new Map<string, readonly Draw[]>();
  const faults = new Map<string, Learnt & { readonly share: number }>();
  for (const [place, fault] of tree.faults.entries()) {
    const share = shares[place] ?? 0;
    const { draws: of, starts } = faultStart(tree, fault);
    if (share === 0 || starts.length === 0) continue;
    draws.set(fault.id, of);
    boards.set(
      fault.id,
      starts.map((start) => ({ ...start, share: start.share * share })),
    );
    faults.set(fault.id, { share, minutes: 0, checks: 0, right: 0, stuck: 0 });
  }
  const told: Lesson = { faults, minutes: 0, checks: 0, right: 0, stuck: 0, leftOut: 0, points: 0 };
  const open: Point[] = [{ session: begun(tree), minutes: 0, checks: 0, boards }];
  for (let point = open.pop(); point !== undefined; point = open.pop()) {
    if (massOf(point) < rare) {
      told.leftOut += massOf(point);
      note(told, point, null, tree, byTree);
      continue;
    }
    told.points += 1;
    const named = nameableSection(point.session, enough);
    const proposed = named === null ? (proposalsOf(point.session)?.ranked[0]?.check ?? null) : null;
    if (proposed === null) note(told, point, named, tree, null);
    else {
      if (!checksNow(point.session).includes(proposed))
        throw new Error(`expected "${proposed.reading.id}" to be proposed only where it can be taken`);
      open.push(...pointsAfter(point, proposed, draws));
    }
  }
  const all = [...faults.values()].reduce((sum, { share }) => sum + share, 0);
  for (const learnt of faults.values()) {
    for (const key of keys) {
      told[key] += learnt[key] / all;
      learnt[key] /= learnt.share;
    }
  }
  return told;
}

const keys = ['minutes', 'checks', 'right', 'stuck'] as const;

const massOf = ({ boards }: Point): number =>
  [...boards.values()].flat().reduce((sum, { share }) => sum + share, 0);

/** A job opened and begun, with everything passed that goes without saying. */
function begun(tree: CompiledTree): Session {
  let session = openSession(tree, { board: null, laterTrees: [] });
  const settings = usualSettings(tree);
  for (;;) {
    const { ask } = questionOf(session);
    const isOpening = ['opening', 'setting', 'symptom', 'acknowledgement'].includes(ask);
    const answer = isOpening ? autoAnswer(session, settings, null) : null;
    if (answer === null) return session;
    session = said(session, answer);
  }
}

function said(session: Session, answer: Answer): Session {
  const entry = entryFor(session, answer, at);
  if (!entry.ok) throw new Error(`expected ${JSON.stringify(answer)} to be taken: ${entry.refusal.text}`);
  return apply(session, entry.value);
}

/** The fault section that the suspects name; null while several are possible. What is left when nothing tells it apart may be of
 *  several sections: the likeliest of them is named. */
function nameableSection(session: Session, enough: number): string | null {
  const { ranked } = suspectsOf(session);
  const sums = new Map<string, number>();
  for (const { faults, share } of ranked) {
    const [fault] = faults;
    const section = fault === undefined ? 'none' : (sectionOf(session.loaded.tree, fault.id) ?? fault.id);
    sums.set(section, (sums.get(section) ?? 0) + share);
  }
  const [best] = [...sums].toSorted((a, b) => b[1] - a[1]);
  return best !== undefined && best[1] >= enough ? best[0] : null;
}

const sectionOf = ({ sections }: CompiledTree, fault: string): string | undefined =>
  sections.find((section) => mends(section, fault))?.id;

function note(
  told: Lesson,
  { session, minutes, checks, boards }: Point,
  named: string | null,
  tree: CompiledTree,
  then: LessonOptions['byTree'] | null,
): void {
  for (const [fault, draws] of boards) {
    const share = draws.reduce((sum, draw) => sum + draw.share, 0);
    const learnt = told.faults.get(fault);
    if (learnt === undefined) continue;
    learnt.minutes += share * (minutes + (then?.(fault) ?? 0));
    learnt.checks += share * checks;
    if (named === null && then === null) learnt.stuck += share;
    const section = named ?? nameableSection(session, 0);
    if (then !== null || section === sectionOf(tree, fault)) learnt.right += share;
  }
}

/** What comes of a check, band by band. */
function pointsAfter(
  { session, minutes, checks, boards }: Point,
  check: Check,
  draws: ReadonlyMap<string, Draws>,
): readonly Point[] {
  const ready = goTo(session, check);
  const { id } = check.reading;
  return bandsOf(check.reading).flatMap((band) => {
    const answering = new Map<string, readonly Draw[]>();
    for (const [fault, ways] of boards) {
      const of = draws.get(fault) as Draws;
      const next = ways.flatMap((way) =>
        of
          .draw(id, way.drawn)
          .filter(({ drawn, share }) => share > 0 && of.bandOf(id, drawn) === band)
          .map(({ drawn, share }) => ({ drawn, share: share * way.share })),
      );
      if (next.length > 0) answering.set(fault, next);
    }
    if (answering.size === 0) return [];
    const typed = typedFor(ready.session, check.reading, band);
    const after = said(ready.session, { say: 'value', reading: id, typed, board: 'failing' });
    const took = ready.minutes + check.reading.minutes + check.reading.wait;
    return [
      {
        session: said(after, { say: 'return' }),
        minutes: minutes + took,
        checks: checks + 1,
        boards: answering,
      },
    ];
  });
}

/** Goes on a detour until the reading can be taken, and what that takes. */
function goTo(from: Session, { section, reading }: Check): { session: Session; minutes: number } {
  let session = said(from, { say: 'detour', section: section ?? '', reading: reading.id });
  let minutes = 0;
  for (;;) {
    const question = questionOf(session);
    if (question.ask === 'task') {
      minutes += question.section.minutes + question.section.wait;
      session = said(session, { say: 'done' });
    } else if (question.ask === 'acknowledgement') session = said(session, { say: 'acknowledge' });
    else break;
  }
  const { conditions } = session.position;
  const changes = Object.entries(reading.when).filter(
    ([condition, value]) => conditions[condition] !== value,
  );
  if (changes.length === 0) return { session, minutes };
  const arranged = arrangingOf(session.loaded.tree, conditions).minutesTo(reading.when, conditions) ?? 0;
  session = said(session, { say: 'arrange', conditions: Object.fromEntries(changes) });
  return { session, minutes: minutes + arranged };
}
