import { propose } from '../next/index.ts';
import type { Belief, Hypothesis } from '../suspects/belief.ts';
import { beliefOf } from './belief-of.ts';
import { checksIn } from './checks-in.ts';
import type { Drill, DrillCheck } from './drill.ts';
import { groundOf } from './ground-of.ts';
import { withEvent } from './with-event.ts';

/** Bench minutes of the first hint at a step, which says what to measure next, and of the second, which narrows the suspects. */
export const hintCosts = [5, 10] as const;

export interface Hinted {
  readonly drill: Drill;
  /** One or two sentences. */
  readonly text: string;
  /** Bench minutes. A hint that was given at this step already costs nothing more. */
  readonly cost: number;
}

/** What would help now: first the reading to take and why, then, asked again before anything is measured, what is still suspected. */
export function hint(drill: Drill): Hinted {
  const before = hintsSince(drill);
  const cost = drill.state === 'running' ? (hintCosts[before] ?? 0) : 0;
  const text = before === 0 ? nextCheck(drill) : suspects(drill);
  if (drill.state !== 'running' || before >= hintCosts.length) return { drill, text, cost: 0 };
  return { drill: withEvent(drill, { kind: 'hinted', hint: text }, { minutes: cost }), text, cost };
}

/** Hints since the board said something last. */
function hintsSince(drill: Drill): number {
  const told = drill.events.findLastIndex(({ kind }) => kind === 'measured' || kind === 'named');
  return drill.events.slice(told + 1).filter(({ kind }) => kind === 'hinted').length;
}

/** Checks that are in order now: nothing stands before them but hazards, which whoever takes them acknowledges. */
export const safeChecks = (drill: Drill): readonly DrillCheck[] =>
  checksIn(drill).filter(
    ({ taken, warnings, lacks }) =>
      taken.length === 0 && lacks === null && warnings.every(({ kind }) => kind === 'hazard'),
  );

function nextCheck(drill: Drill): string {
  const belief = beliefOf(drill);
  const arranging = { ...groundOf(drill).arranging, now: drill.conditions };
  const [best] = propose(belief, drill.tree, safeChecks(drill), { arranging }).ranked;
  if (best === undefined) return 'Nothing that can be measured now tells more: name what is likeliest.';
  const parts = best.parts.flatMap(({ hypothesis, band }) => {
    const found = belief.hypotheses[hypothesis];
    return found === undefined || found.faults.length === 0 ? [] : [{ band, is: nameOf(found) }];
  });
  const bands = [...new Set(parts.map(({ band }) => band))];
  const told = bands.slice(0, 3).map((band) => `${band} if ${parts.find((part) => part.band === band)?.is}`);
  const why = told.length < 2 ? '' : ` It shows ${told.slice(0, -1).join(', ')}, and ${told.at(-1)}.`;
  return `Measure next: ${best.check.reading.is} (${best.check.reading.id}).${why}`;
}

/** As many as hold nine tenths together, five at most. */
function suspects(drill: Drill): string {
  const belief = beliefOf(drill);
  const ranked = ranking(belief);
  const named: string[] = [];
  let sum = 0;
  for (const { hypothesis, share } of ranked) {
    if (sum >= 0.9 || named.length === 5) break;
    named.push(`${nameOf(hypothesis)} (${percent(share)})`);
    sum += share;
  }
  return `By what was measured it is most likely one of these: ${named.join('; ')}.`;
}

const ranking = ({ hypotheses, shares }: Belief) =>
  hypotheses
    .map((hypothesis, at) => ({ hypothesis, share: shares[at] ?? 0 }))
    .toSorted((a, b) => b.share - a.share);

const percent = (share: number): string => `${Math.round(share * 100)} %`;

const nameOf = ({ faults }: Hypothesis): string =>
  faults.length === 0 ? 'nothing that the tree lists' : faults.map(({ is }) => lower(is)).join(' and ');

/** `The crystal is cracked` inside a sentence; names such as `ROM` stay as they are. */
const lower = (text: string): string =>
  /^[A-Z][a-z]|^A /.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text;
