import type { Debrief, DebriefStep, Predicted } from './debrief.ts';
import { type Drill, unlisted } from './drill.ts';
import { enoughIn } from './enough-at.ts';
import { groundOf } from './ground-of.ts';
import { minutesAlong, minutesProposed } from './orders-on.ts';
import { seenIn } from './seen-in.ts';
import { stepsIn } from './steps-in.ts';

/** A check that tells less, in bits, tells nothing. */
const leastBits = 0.02;

/** A drill looked back at. Made for drills that are over: it says what was hidden. */
export function debriefOf(drill: Drill): Debrief {
  const { hidden } = groundOf(drill).board;
  const { events, tree, minutes, waited } = drill;
  const hypotheses = [
    ...tree.faults.map(({ id, is }) => ({ id, is })),
    { id: unlisted, is: 'None of the faults that this tree lists' },
  ];
  const steps = stepsIn(drill);
  const named = events.flatMap((event) => (event.kind === 'named' ? [event] : []));
  const passed = events.flatMap((event, at) =>
    event.kind === 'measured' || event.kind === 'named'
      ? event.passed.map((one) => ({ ...one, event: at }))
      : [],
  );
  return {
    hidden: hidden.isListed ? hidden.fault : null,
    outcome: drill.state,
    rightAtFirst: named[0]?.right === true,
    hypotheses,
    steps,
    minutes,
    waited,
    checking: checkingIn(drill),
    best: minutesProposed(drill),
    along: minutesAlong(drill),
    enough: enoughOf(drill, steps, hypotheses),
    idle: steps
      .filter(({ event, bits }) => events[event]?.kind === 'measured' && bits < leastBits)
      .map(({ event }) => event),
    passed,
    harm: passed.filter(({ harm }) => harm).length,
    predictions: predictionsIn(drill),
    hints: events.filter(({ kind }) => kind === 'hinted').length,
    wrong: named.filter(({ right }) => !right).map(({ fault }) => fault),
  };
}

/** Until the first fault is named. */
function checkingIn({ events, minutes }: Drill): number {
  const first = events.findIndex(({ kind }) => kind === 'named');
  return first < 0 ? minutes : (events[first - 1]?.minute ?? 0);
}

/** Where it was enough from the start on, no check was needed at all. */
function enoughOf(
  drill: Drill,
  steps: readonly DebriefStep[],
  hypotheses: Debrief['hypotheses'],
): Debrief['enough'] {
  const step = steps.find((one) => enoughIn(one, hypotheses, drill.tree));
  if (step === undefined || drill.events[step.event]?.kind === 'named') return null;
  return { event: step.event, minute: step.minute, after: Math.max(0, checkingIn(drill) - step.minute) };
}

function predictionsIn(drill: Drill): readonly Predicted[] {
  const seen = seenIn(drill);
  return drill.events.flatMap((event, at): readonly Predicted[] => {
    if (event.kind !== 'predicted') return [];
    const { reading, band: said } = event;
    const next = seen.find((one) => one.at > at && one.event.reading === reading);
    const came = next?.observation.bands ?? null;
    return came === null ? [] : [{ event: at, reading, said, came, right: came.includes(said) }];
  });
}
