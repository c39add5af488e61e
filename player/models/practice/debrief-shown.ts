import type { Debrief } from '../../../engine/practice/debrief.ts';
import type { Drill } from '../../../engine/practice/drill.ts';
import { unlisted } from '../../../engine/practice/drill.ts';
import { type DrillResult, debriefOf, resultOf } from '../../../engine/practice/index.ts';
import type { Moment } from '../../parts/narrowing-geometry.ts';
import type { OtherOrder } from '../../parts/narrowing-picture.tsx';
import { minutesText } from '../minutes-text.ts';
import { type DebriefLine, debriefLines } from './debrief-lines.ts';
import { type DebriefStep, debriefSteps, faultName } from './debrief-steps.ts';
import type { Outcome } from './progress.ts';

/** A drill that is over, as the debrief shows it. */
export interface DebriefShown {
  readonly title: string;
  /** What the board had. */
  readonly hidden: string;
  readonly found: boolean;
  readonly minutes: number;
  readonly moments: readonly Moment[];
  /** Each with the mark that stands for it in the drawing. */
  readonly steps: readonly DebriefStep[];
  readonly enough: { readonly minute: number; readonly says: string } | null;
  readonly orders: readonly OtherOrder[];
  readonly lines: readonly DebriefLine[];
  /** The drawing in words. */
  readonly says: string;
  readonly outcome: Omit<Outcome, 'format' | 'at'>;
  result(name: string, at: string): DrillResult;
}

export function debriefShown(drill: Drill): DebriefShown {
  const debrief = debriefOf(drill);
  const steps = debriefSteps(drill, debrief);
  const moments = momentsOf(drill, debrief);
  const { best, along, enough, minutes, checking } = debrief;
  return {
    title: drill.tree.title,
    hidden: faultName(drill, debrief.hidden?.id ?? unlisted),
    found: debrief.outcome === 'found',
    minutes,
    moments,
    steps,
    enough: enough && { minute: enough.minute, says: `enough after minute ${enough.minute}` },
    orders: [
      ...(best === null ? [] : [{ minute: best, says: `best checks, ${best} min` }]),
      ...(along === null ? [] : [{ minute: along, says: `tree's order, ${along} min` }]),
    ],
    lines: debriefLines(debrief, steps),
    says: pictureWords(debrief, moments),
    outcome: {
      family: debrief.hidden?.family ?? drill.tree.title,
      rightAtFirst: debrief.rightAtFirst,
      hints: debrief.hints,
      minutes: checking,
      best,
    },
    result: (name, at) => resultOf(drill, name, at, debrief),
  };
}

/** What was known after each event; what says nothing leaves it as it was. */
function momentsOf({ events }: Drill, { steps, hidden, hypotheses }: Debrief): readonly Moment[] {
  const place = hypotheses.findIndex(({ id }) => id === (hidden?.id ?? unlisted));
  let known: Moment = { minute: 0, bits: 0, right: 0 };
  const at = (event: number, minute: number): Moment => {
    const step = steps.find((one) => one.event === event);
    known =
      step === undefined
        ? { ...known, minute }
        : { minute, bits: Math.log2(Math.max(step.effective, 1)), right: step.shares[place] ?? 0 };
    return known;
  };
  return [at(-1, 0), ...events.map(({ minute }, index) => at(index, minute))];
}

/** The drawing in words: the table below it has the rest. */
function pictureWords({ outcome, minutes, enough }: Debrief, moments: readonly Moment[]): string {
  const suspects = (moment: Moment | undefined) => Math.round(2 ** (moment?.bits ?? 0));
  const end = outcome === 'found' ? 'the fault was found' : 'the board was given up';
  return [
    `Suspects over ${minutesText(minutes)}: about ${suspects(moments[0])} at the start, ${suspects(moments.at(-1))} when ${end}`,
    ...(enough === null ? [] : [`the evidence was enough after minute ${enough.minute}`]),
    'the table below has every step',
  ].join('; ');
}
