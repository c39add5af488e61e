import { bandMarks } from '../../analysis/alike-bands.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { Draws } from '../../suspects/draws.ts';
import { faultStart } from '../fault-start.ts';
import type { TreeWalk } from '../tree-walks.ts';
import type { WalkStep } from '../walk-minutes.ts';

/** Bands that were seen, and how often it was these. */
export interface Seen {
  readonly key: string;
  readonly share: number;
}

/** What is seen on walks. Walks tell bands apart only where the tree does; here what a single reading shows is told in full again. */
export class Evidence {
  readonly #draws: readonly Draws[];
  readonly #marks: (reading: string, band: string) => string;
  readonly #known = new Map<TreeWalk, Map<string, readonly Seen[]>>();

  constructor(tree: CompiledTree) {
    this.#draws = tree.faults.map((fault) => faultStart(tree, fault).draws);
    this.#marks = bandMarks(tree);
  }

  /** The bands that a reading shows on a walk, whether it is taken there or not. */
  bandsOf(walk: TreeWalk, reading: string): readonly Seen[] {
    const ofWalk = this.#known.get(walk) ?? new Map<string, readonly Seen[]>();
    this.#known.set(walk, ofWalk);
    const known = ofWalk.get(reading) ?? this.#shown(walk, reading);
    ofWalk.set(reading, known);
    return known;
  }

  /** What a section's readings show together; each comes out for itself. */
  hereOf(walk: TreeWalk, { fresh }: WalkStep): readonly Seen[] {
    let all: readonly Seen[] = [{ key: '', share: 1 }];
    for (const reading of fresh) {
      all = all.flatMap((before) =>
        this.bandsOf(walk, reading).map(({ key, share }) => ({
          key: `${before.key}${reading}\n${key}\n`,
          share: before.share * share,
        })),
      );
    }
    return all;
  }

  /** What was seen before, as far as the tree tells it apart: the same text for the same. */
  keyOf(bands: ReadonlyMap<string, string>): string {
    return [...bands]
      .map(([reading, band]) => `${reading}\n${this.#marks(reading, band)}`)
      .sort()
      .join('\n');
  }

  #shown({ fault, drawn }: TreeWalk, reading: string): readonly Seen[] {
    const draws = this.#draws[fault];
    if (draws === undefined) return [];
    const [root = reading] = draws.roots(reading);
    const walked = draws.bandOf(reading, drawn);
    const before = new Map([...drawn].filter(([id]) => id !== root));
    const shares = new Map<string, number>();
    for (const next of draws.draw(reading, before)) {
      const band = draws.bandOf(reading, next.drawn) ?? '';
      const fits = walked === undefined || this.#marks(root, band) === this.#marks(root, walked);
      if (fits && next.share > 0) shares.set(band, (shares.get(band) ?? 0) + next.share);
    }
    const sum = [...shares.values()].reduce((all, share) => all + share, 0);
    if (sum === 0) return [{ key: walked ?? '', share: 1 }];
    return [...shares].map(([key, share]) => ({ key, share: share / sum }));
  }
}
