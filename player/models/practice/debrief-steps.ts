import type { Debrief } from '../../../engine/practice/debrief.ts';
import type { Drill, PassedOver, TimedEvent } from '../../../engine/practice/drill.ts';
import type { TimeMark } from '../../parts/time-mark.ts';
import { bandWords } from '../band-words.ts';

/** One thing that was done, as the debrief lists it. */
export interface DebriefStep extends TimeMark {
  readonly what: string;
  /** What the instrument showed, or the proof; empty where nothing was shown. */
  readonly showed: string;
  /** Equally likely suspects before and after it. */
  readonly before: number;
  readonly after: number;
  /** How often it halved what was open; null where it measured nothing. */
  readonly halvings: number | null;
  readonly passed: readonly PassedOver[];
  /** What the trainee said before, and whether it came so; null where nothing was said. */
  readonly predicted: { readonly said: string; readonly right: boolean } | null;
}

/** What was done, in its order: each check, hint and name with its number. What only prepares it (conditions, tasks, what was
 *  said before) has none. */
export function debriefSteps(drill: Drill, debrief: Debrief): readonly DebriefStep[] {
  const steps: DebriefStep[] = [];
  let open = debrief.steps[0]?.effective ?? 1;
  for (const [index, event] of drill.events.entries()) {
    const told = debrief.steps.find((step) => step.event === index);
    const after = told?.effective ?? open;
    const row = rowOf(drill, debrief, event, index);
    if (row !== null) {
      const { minute } = event;
      const halvings = event.kind === 'measured' ? (told?.bits ?? 0) : null;
      steps.push({ ...nothing, ...row, number: steps.length + 1, minute, before: open, after, halvings });
    }
    open = after;
  }
  return steps;
}

const nothing = { showed: '', passed: [], warned: false, predicted: null } as const;

type Row = Pick<DebriefStep, 'kind' | 'what'> &
  Partial<Pick<DebriefStep, 'showed' | 'passed' | 'warned' | 'predicted'>>;

function rowOf(drill: Drill, debrief: Debrief, event: TimedEvent, index: number): Row | null {
  switch (event.kind) {
    case 'measured':
      return {
        kind: debrief.idle.includes(index) ? 'told nothing' : 'told',
        what: readingName(drill, event.reading),
        showed: event.typed,
        passed: event.passed,
        warned: event.passed.length > 0,
        predicted: predictedFor(drill, debrief, event.reading, index),
      };
    case 'twin':
      return {
        kind: 'told nothing',
        what: `Known-good board: ${readingName(drill, event.reading)}`,
        showed: event.typed,
      };
    case 'hinted':
      return { kind: 'hint', what: `Hint. ${event.hint}` };
    case 'named':
      return {
        kind: event.right ? 'right' : 'wrong',
        what: `Named: ${faultName(drill, event.fault)}`,
        showed: event.right ? 'proven' : 'not the cause',
        passed: event.passed,
        warned: event.passed.length > 0,
      };
    case 'gave-up':
      return { kind: 'given up', what: 'Given up' };
    default:
      return null;
  }
}

/** What was said of a reading since it was taken last. */
function predictedFor(
  { tree, events }: Drill,
  { predictions }: Debrief,
  id: string,
  index: number,
): DebriefStep['predicted'] {
  const before = events.slice(0, index).findLastIndex((one) => one.kind === 'measured' && one.reading === id);
  const found = predictions.findLast(
    ({ event, reading }) => reading === id && event < index && event > before,
  );
  if (found === undefined) return null;
  return {
    said: bandWords(
      tree.readings.find((one) => one.id === id),
      [found.said],
    ),
    right: found.right,
  };
}

const readingName = ({ tree }: Drill, id: string): string =>
  tree.readings.find((one) => one.id === id)?.is ?? id;

/** What a fault is called; `unlisted` is none of the tree's. */
export const faultName = ({ tree }: Pick<Drill, 'tree'>, id: string): string =>
  tree.faults.find((one) => one.id === id)?.is ?? 'None of the faults that this tree lists';
