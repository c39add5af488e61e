import type { PracticeShelf } from '../../ports/practice-shelf.ts';

/** What is kept of a drill that came to its end. */
export interface Outcome {
  readonly format: 1;
  readonly at: string;
  /** What the hidden fault is one of; the tree's title where the tree does not say. */
  readonly family: string;
  /** The first fault that was named was the right one. */
  readonly rightAtFirst: boolean;
  readonly hints: number;
  readonly minutes: number;
  /** What the best next check each time takes to that fault; null where it is not known. */
  readonly best: number | null;
}

/** How drills on one family of faults went. */
export interface FamilyProgress {
  readonly family: string;
  readonly drills: number;
  readonly rightAtFirst: number;
  /** Right at first, and no hint taken. */
  readonly unaided: number;
  /** Minutes spent for each minute of the best checks, over all drills where that is known. */
  readonly against: number | null;
}

const prefix = 'outcome.';

/** Keeps how a drill ended. The first time counts: who plays the same board again knows it. */
export function keepOutcome(shelf: PracticeShelf, code: string, outcome: Outcome): boolean {
  return shelf.read(prefix + code) !== null || shelf.write(prefix + code, JSON.stringify(outcome));
}

const namesOf = (shelf: PracticeShelf) => shelf.names().filter((name) => name.startsWith(prefix));

/** Forgets how drills went; those in progress stay. */
export function clearProgress(shelf: PracticeShelf): void {
  for (const name of namesOf(shelf)) shelf.remove(name);
}

/** Family by family, the most practised first. */
export function progressOf(shelf: PracticeShelf): readonly FamilyProgress[] {
  const outcomes = namesOf(shelf).flatMap((name) => outcomeOf(shelf.read(name)));
  return [...new Set(outcomes.map(({ family }) => family))]
    .map((family) =>
      familyOf(
        family,
        outcomes.filter((one) => one.family === family),
      ),
    )
    .sort((a, b) => b.drills - a.drills || a.family.localeCompare(b.family));
}

function familyOf(family: string, outcomes: readonly Outcome[]): FamilyProgress {
  const known = outcomes.filter(({ best }) => best !== null && best > 0);
  const sum = (numbers: readonly number[]) => numbers.reduce((all, one) => all + one, 0);
  return {
    family,
    drills: outcomes.length,
    rightAtFirst: outcomes.filter(({ rightAtFirst }) => rightAtFirst).length,
    unaided: outcomes.filter(({ rightAtFirst, hints }) => rightAtFirst && hints === 0).length,
    against:
      known.length === 0
        ? null
        : sum(known.map(({ minutes }) => minutes)) / sum(known.map(({ best }) => best ?? 0)),
  };
}

function outcomeOf(text: string | null): readonly Outcome[] {
  try {
    const outcome = JSON.parse(text ?? 'null') as Partial<Outcome> | null;
    return outcome?.format === 1 && typeof outcome.family === 'string' ? [outcome as Outcome] : [];
  } catch {
    return [];
  }
}
