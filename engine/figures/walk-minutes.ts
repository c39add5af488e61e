import type { Entry } from '../model/entry.ts';
import { arrangingOf } from '../next/index.ts';
import type { Session } from '../run/index.ts';

/** Minutes at the bench. */
export interface Minutes {
  readonly handsOn: number;
  /** Minutes of waiting besides. */
  readonly waiting: number;
}

export const total = ({ handsOn, waiting }: Minutes): number => handsOn + waiting;

/** One section on a walk, and what it took. */
export interface WalkStep extends Minutes {
  readonly section: string;
  /** The bands that were read here, by reading: also those that were known before and cost nothing. */
  readonly bands: Readonly<Record<string, string>>;
  /** Those that were read here for the first time. */
  readonly fresh: readonly string[];
  /** What the board was in when the section was come to. */
  readonly conditions: Readonly<Record<string, string>>;
}

/** What a walk took, section by section. A reading taken a second time costs nothing, and so does the symptom. */
export function walkSteps(session: Session): readonly WalkStep[] {
  const { tree } = session.loaded;
  const readings = session.loaded.readings;
  const arranging = arrangingOf(tree, {});
  const taken = new Set(tree.given.map(({ reading }) => reading));
  const steps: Writable[] = [];
  let conditions: Readonly<Record<string, string>> = Object.fromEntries(
    tree.conditions.map(({ id, values }) => [id, values[0] ?? '']),
  );
  let arranged = 0;
  const stepAt = (section: string): Writable => {
    const last = steps.at(-1);
    if (last?.section === section) return last;
    const step = { section, handsOn: 0, waiting: 0, bands: {}, fresh: [], conditions };
    steps.push(step);
    return step;
  };
  for (const entry of session.entries) {
    if (entry.kind === 'arranged') {
      arranged += arranging.minutesTo(entry.conditions, conditions) ?? 0;
      conditions = { ...conditions, ...entry.conditions };
    } else if (isOfSection(entry)) {
      const step = stepAt(entry.section);
      step.handsOn += arranged;
      arranged = 0;
      if (entry.kind === 'did') {
        const section = session.loaded.sections.get(entry.section);
        if (section?.kind !== 'task') continue;
        step.handsOn += section.minutes;
        step.waiting += section.wait;
        conditions = { ...conditions, ...section.sets };
      } else {
        const { reading: id, bands } = entry.observation;
        const reading = readings.get(id);
        step.bands[id] = bands[0] ?? '';
        if (taken.has(id)) continue;
        taken.add(id);
        step.fresh.push(id);
        step.handsOn += reading?.minutes ?? 0;
        step.waiting += reading?.wait ?? 0;
      }
    }
  }
  return steps;
}

interface Writable {
  readonly section: string;
  handsOn: number;
  waiting: number;
  readonly bands: Record<string, string>;
  readonly fresh: string[];
  readonly conditions: Readonly<Record<string, string>>;
}

const isOfSection = (entry: Entry): entry is Extract<Entry, { readonly kind: 'did' | 'read' }> =>
  entry.kind === 'did' || entry.kind === 'read';
