import type { Debrief } from './debrief.ts';
import { debriefOf } from './debrief-of.ts';
import { type Drill, type DrillManner, unlisted } from './drill.ts';
import { codeOfPlan } from './plan-code.ts';

/** How a drill went, to be handed in: plain JSON, `schema/drill-result.schema.json`. */
export interface DrillResult {
  readonly format: 1;
  readonly kind: 'drill-result';
  /** The trainee. */
  readonly name: string;
  /** ISO 8601, when the drill was over. */
  readonly at: string;
  readonly tree: { readonly id: string; readonly title: string; readonly digest: string };
  readonly code: string;
  readonly manner: DrillManner;
  /** What was hidden: a fault's id, or `unlisted`; and what it is one of, where the tree says so. */
  readonly hidden: string;
  readonly family: string | null;
  readonly outcome: 'found' | 'gave up' | 'running';
  readonly rightAtFirst: boolean;
  /** Faults that were named and were not it. */
  readonly wrong: readonly string[];
  readonly minutes: number;
  readonly waited: number;
  readonly checking: number;
  readonly best: number;
  readonly along: number | null;
  readonly checks: number;
  /** Checks that told nothing. */
  readonly idle: number;
  /** Minutes of checks after the evidence was enough; null where it never was. */
  readonly afterEnough: number | null;
  readonly hints: number;
  readonly passedOver: number;
  readonly harm: number;
  readonly predictions: { readonly right: number; readonly of: number };
}

/** @param name of the trainee
 *  @param at the present moment, ISO 8601 */
export function resultOf(
  drill: Drill,
  name: string,
  at: string,
  debrief: Debrief = debriefOf(drill),
): DrillResult {
  const { plan, tree, events } = drill;
  const { hidden, predictions, enough } = debrief;
  return {
    format: 1,
    kind: 'drill-result',
    name,
    at,
    tree: { id: tree.id, title: tree.title, digest: tree.digest },
    code: codeOfPlan(plan),
    manner: plan.manner,
    hidden: hidden?.id ?? unlisted,
    family: hidden?.family ?? null,
    outcome: debrief.outcome,
    rightAtFirst: debrief.rightAtFirst,
    wrong: debrief.wrong,
    minutes: debrief.minutes,
    waited: debrief.waited,
    checking: debrief.checking,
    best: debrief.best,
    along: debrief.along,
    checks: events.filter(({ kind }) => kind === 'measured').length,
    idle: debrief.idle.length,
    afterEnough: enough?.after ?? null,
    hints: debrief.hints,
    passedOver: debrief.passed.length,
    harm: debrief.harm,
    predictions: { right: predictions.filter(({ right }) => right).length, of: predictions.length },
  };
}
