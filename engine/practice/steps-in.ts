import { entropyOf } from '../suspects/entropy-of.ts';
import { beliefOf } from './belief-of.ts';
import type { DebriefStep } from './debrief.ts';
import { type Drill, unlisted } from './drill.ts';

/** A suspect with less hardly is one. */
const leastShare = 0.01;

/** How the suspects went from one event to the next; the first step is the beginning. */
export function stepsIn(drill: Drill): readonly DebriefStep[] {
  const { faults } = drill.tree;
  const sharesAt = (upTo: number): readonly number[] => {
    const { hypotheses, shares } = beliefOf(drill, upTo);
    const found = new Map(hypotheses.map((one, at) => [one.faults[0]?.id ?? unlisted, shares[at] ?? 0]));
    return [...faults.map(({ id }) => found.get(id) ?? 0), found.get(unlisted) ?? 0];
  };
  let before = sharesAt(0);
  const steps = [stepOf(-1, 0, before, before)];
  for (const [event, { kind, minute }] of drill.events.entries()) {
    if (kind !== 'measured' && kind !== 'named') continue;
    const shares = isFound(drill, event) ? certain(drill, event) : sharesAt(event + 1);
    steps.push(stepOf(event, minute, shares, before));
    before = shares;
  }
  return steps;
}

const isFound = ({ events }: Drill, at: number): boolean => {
  const event = events[at];
  return event?.kind === 'named' && event.right;
};

/** Proven: there is nothing left to suspect. */
function certain({ tree, events }: Drill, at: number): readonly number[] {
  const event = events[at];
  const id = event?.kind === 'named' ? event.fault : unlisted;
  return [...tree.faults.map((fault) => Number(fault.id === id)), Number(id === unlisted)];
}

function stepOf(
  event: number,
  minute: number,
  shares: readonly number[],
  before: readonly number[],
): DebriefStep {
  const bits = shares.reduce((sum, share, at) => {
    const earlier = before[at] ?? 0;
    return sum + (share > 0 && earlier > 0 ? share * Math.log2(share / earlier) : 0);
  }, 0);
  return {
    event,
    minute,
    shares,
    suspects: shares.filter((share) => share >= leastShare).length,
    effective: 2 ** entropyOf(shares),
    bits: Math.max(0, bits),
  };
}
