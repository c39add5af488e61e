import type { Drill } from '../../../engine/practice/drill.ts';
import type { PracticeShelf } from '../../ports/practice-shelf.ts';

/** A drill as it is kept on the device, so that it survives a closed page: all but tree and board sheet, which are fetched
 *  again. */
export interface KeptDrill {
  readonly format: 1;
  readonly title: string;
  /** Time of its last event. */
  readonly at: string;
  readonly drill: Omit<Drill, 'tree' | 'board'>;
}

const prefix = 'drill.';

/** False where the browser did not keep it. */
export function keepDrill(shelf: PracticeShelf, code: string, drill: Drill, at: string): boolean {
  const { tree, board, ...rest } = drill;
  const kept: KeptDrill = { format: 1, title: tree.title, at, drill: rest };
  return shelf.write(prefix + code, JSON.stringify(kept));
}

export function keptDrill(shelf: PracticeShelf, code: string): KeptDrill | null {
  const text = shelf.read(prefix + code);
  if (text === null) return null;
  try {
    const kept = JSON.parse(text) as Partial<KeptDrill>;
    return kept.format === 1 && Array.isArray(kept.drill?.events) ? (kept as KeptDrill) : null;
  } catch {
    return null;
  }
}

export const dropDrill = (shelf: PracticeShelf, code: string): void => shelf.remove(prefix + code);

/** A drill that waits to be gone on with. */
export interface Unfinished {
  readonly code: string;
  readonly title: string;
  readonly minutes: number;
  readonly at: string;
}

/** Drills that are not at their end, the latest first. */
export function unfinishedDrills(shelf: PracticeShelf): readonly Unfinished[] {
  return shelf
    .names()
    .filter((name) => name.startsWith(prefix))
    .map((name) => name.slice(prefix.length))
    .flatMap((code) => {
      const kept = keptDrill(shelf, code);
      if (kept === null || kept.drill.state !== 'running') return [];
      return [{ code, title: kept.title, minutes: kept.drill.minutes, at: kept.at }];
    })
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at));
}
