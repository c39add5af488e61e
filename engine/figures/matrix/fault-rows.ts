import type { CompiledTree } from '../../model/compiled-tree.ts';
import type { Fault, Share } from '../../model/fault.ts';
import type { Draw, Drawn, Draws } from '../../suspects/draws.ts';
import { shownBands } from '../../suspects/shown-bands.ts';
import { faultStart } from '../fault-start.ts';

/** What a fault shows in one reading: bands with shares, independent of all other readings; null where it says nothing. */
export type Showing = readonly Share[] | null;

/** One way in which a board with a fault can answer. */
export interface FaultRow {
  /** Of the boards with this fault that show the symptom. */
  readonly share: number;
  readonly shows: ReadonlyMap<string, Showing>;
}

export interface FaultRows {
  /** How likely a board with this fault shows the symptom. */
  readonly shown: number;
  readonly rows: readonly FaultRow[];
  /** Readings that are taken to say nothing, against what the fault may show: `rest: unknown`, or too many ways. */
  readonly silent: readonly string[];
}

/** Ways of one fault that are told apart. */
const mostRows = 64;

/**
 * The ways of a fault, split exactly. Readings that come out independently stay bands with shares in one row; those that hang together
 * (alike, hidden behind, or computed from the same thing that comes out by chance) are drawn together, a row for each way.
 */
export function faultRows(tree: CompiledTree, fault: Fault, readings: readonly string[]): FaultRows {
  const { draws, starts, shown } = faultStart(tree, fault);
  const unknown = unknownReadings(tree, fault, readings, draws);
  const silent = new Set(unknown);
  const spoken = readings.filter((id) => !silent.has(id));
  const rows = starts.flatMap((start) => {
    let open: readonly { readonly share: number; readonly shows: Map<string, Showing> }[] = [
      { share: start.share, shows: new Map() },
    ];
    for (const cluster of clustersOf(draws, start.drawn, spoken)) {
      const ways = waysOf(draws, start.drawn, cluster);
      if (ways === null || open.length * ways.length > mostRows) {
        for (const id of cluster) silent.add(id);
        continue;
      }
      open = open.flatMap((row) =>
        ways.map((way) => ({ share: row.share * way.share, shows: new Map([...row.shows, ...way.shows]) })),
      );
    }
    return open;
  });
  return {
    shown,
    rows: rows.map(({ share, shows }) => ({
      share,
      shows: new Map(readings.map((id) => [id, silent.has(id) ? null : (shows.get(id) ?? null)])),
    })),
    silent: [...silent],
  };
}

/** What follows from a reading of which the fault says nothing is not known either. */
function unknownReadings(
  tree: CompiledTree,
  fault: Fault,
  readings: readonly string[],
  draws: Draws,
): readonly string[] {
  if (fault.rest !== 'unknown') return [];
  const shown = shownBands(tree, fault);
  return readings.filter((id) => draws.roots(id).some((root) => shown.get(root)?.how === 'unknown'));
}

/** Readings that hang together, in the order of the first of each; what comes out by chance alone is in none with others. */
function clustersOf(draws: Draws, drawn: Drawn, readings: readonly string[]): readonly (readonly string[])[] {
  const byRoot = new Map<string, string[]>();
  const clusters = new Set<string[]>();
  for (const id of readings) {
    let mine = [id];
    clusters.add(mine);
    for (const root of draws.roots(id)) {
      if (draws.draw(root, drawn).filter(isMet).length < 2) continue;
      const other = byRoot.get(root);
      if (other !== undefined && other !== mine) {
        other.push(...mine);
        for (const [key, cluster] of byRoot) if (cluster === mine) byRoot.set(key, other);
        clusters.delete(mine);
        mine = other;
      }
      byRoot.set(root, mine);
    }
  }
  // Few ways first: where there are too many in all, the fewest readings fall silent.
  return [...clusters].toSorted((one, other) => one.length - other.length);
}

/** The ways in which readings that hang together come out; null where they are too many. */
function waysOf(
  draws: Draws,
  drawn: Drawn,
  cluster: readonly string[],
): readonly { readonly share: number; readonly shows: ReadonlyMap<string, Showing> }[] | null {
  const [only] = cluster;
  if (cluster.length === 1 && only !== undefined)
    return [{ share: 1, shows: new Map([[only, sharesOf(draws, only, draws.draw(only, drawn))]]) }];
  let all: readonly Draw[] = [{ drawn, share: 1 }];
  for (const id of cluster) {
    all = all.flatMap((before) =>
      draws
        .draw(id, before.drawn)
        .filter(isMet)
        .map((next) => ({ drawn: next.drawn, share: before.share * next.share })),
    );
    if (all.length > mostRows * mostRows) return null;
  }
  const ways = new Map<string, { share: number; readonly shows: ReadonlyMap<string, Showing> }>();
  for (const draw of all) {
    const bands = cluster.map((id) => draws.bandOf(id, draw.drawn) ?? '');
    const key = JSON.stringify(bands);
    const known = ways.get(key);
    if (known !== undefined) known.share += draw.share;
    else {
      const shows = new Map(cluster.map((id, at) => [id, [{ band: bands[at] ?? '', share: 1 }]] as const));
      ways.set(key, { share: draw.share, shows });
    }
  }
  return [...ways.values()];
}

function sharesOf(draws: Draws, id: string, all: readonly Draw[]): readonly Share[] {
  const shares = new Map<string, number>();
  for (const { drawn, share } of all) {
    const band = draws.bandOf(id, drawn);
    if (band !== undefined && share > 0) shares.set(band, (shares.get(band) ?? 0) + share);
  }
  return [...shares].map(([band, share]) => ({ band, share }));
}

const isMet = ({ share }: Draw): boolean => share > 0;
