import type { Fault } from '../../engine/model/fault.ts';
import { usualOdds } from '../../engine/model/odds.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import type { BeliefTree } from '../../engine/suspects/believe.ts';
import { type Drawn, drawsOf } from '../../engine/suspects/draws.ts';
import { possibleUsually } from '../../engine/suspects/possible-usually.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';
import { healthy, unlistedFault } from '../../engine/suspects/unlisted-fault.ts';

/** Everything that one fault does to a board, and how often. */
interface Board {
  readonly bands: ReadonlyMap<string, string>;
  readonly hidden: ReadonlySet<string>;
  /** Readings that nothing is judged in and nobody says anything of. */
  readonly silent: ReadonlySet<string>;
  readonly share: number;
}

/** Every board that a fault makes: all readings drawn, in all combinations. */
function boardsOf(tree: BeliefTree, fault: Fault): readonly Board[] {
  const draws = drawsOf(tree, fault, possibleUsually(tree, fault));
  let all: readonly { readonly drawn: Drawn; readonly share: number }[] = [{ drawn: new Map(), share: 1 }];
  for (const { id } of tree.readings) {
    all = all.flatMap(({ drawn, share }) =>
      draws.draw(id, drawn).map((draw) => ({ drawn: draw.drawn, share: share * draw.share })),
    );
  }
  return all.map(({ drawn, share }) => ({
    share,
    bands: new Map(tree.readings.map(({ id }) => [id, draws.bandOf(id, drawn) ?? ''])),
    hidden: new Set(tree.readings.filter(({ id }) => draws.isHidden(id, drawn)).map(({ id }) => id)),
    silent: new Set(
      tree.readings
        .filter(({ id, normal }) => normal === 'any' && !isShown(tree, fault, id))
        .map(({ id }) => id),
    ),
  }));
}

/** Whether its author says something of a reading, or of one that it is like. */
function isShown({ readings }: BeliefTree, { shows }: Fault, id: string): boolean {
  for (let at: string | null = id; at !== null; ) {
    const name: string = at;
    if (shows.some(({ reading }) => reading === name)) return true;
    at = readings.find((reading) => reading.id === name)?.like ?? null;
  }
  return false;
}

/** P(all sightings | these faults) by going through every board that each fault makes: no cleverness at all. Without derived readings. */
export function bruteLikelihood(
  tree: BeliefTree,
  faults: readonly Fault[],
  sightings: readonly Sighting[],
): number {
  const { slip } = tree.odds ?? usualOdds;
  const own =
    faults.length > 0 ? faults : [unlistedFault(tree.readings, tree.given ?? [], tree.odds ?? usualOdds)];
  const there = sightings.map((sighting) => presentAt(tree, own, sighting));
  const everybody = [...new Set([...own, ...there.flat()])];
  let total = 0;
  for (const boards of combinations(everybody.map((fault) => boardsOf(tree, fault)))) {
    const share = boards.reduce((product, board) => product * board.share, 1);
    // What is seen of a reading with the same faults on the board is one thing, however often it is looked at.
    const things = new Map<
      string,
      { readonly shown: ReadonlyMap<string, number>; readonly seen: Sighting[] }
    >();
    sightings.forEach((sighting, at) => {
      const present = there[at] ?? [];
      const places = present.map((fault) => everybody.indexOf(fault)).sort();
      const key = `${sighting.reading} ${places.join()}`;
      const before = things.get(key);
      const shown = shownBy(
        tree,
        sighting.reading,
        places.map((place) => boards[place] as Board),
      );
      things.set(key, { shown, seen: [...(before?.seen ?? []), sighting] });
    });
    let likelihood = share;
    for (const { shown, seen } of things.values()) {
      likelihood *= [...shown].reduce(
        (sum, [band, chance]) =>
          sum + chance * seen.reduce((product, one) => product * seenWhere(tree, one, band, slip), 1),
        0,
      );
    }
    total += likelihood;
  }
  return total;
}

function presentAt(
  tree: BeliefTree,
  own: readonly Fault[],
  { alsoPresent, board }: Sighting,
): readonly Fault[] {
  const also = tree.faults.filter(({ id }) => alsoPresent.includes(id));
  const all = [...new Set([...own, ...also])].filter(
    ({ comes }) => board !== 'running' || comes !== 'sometimes',
  );
  return all.length > 0 ? all : [healthy];
}

/** Σ w(b') · [(1 − slip) · 1{b' = band} + slip / K]. */
function seenWhere(
  { readings }: BeliefTree,
  { reading, bands }: Sighting,
  band: string,
  slip: number,
): number {
  const found = readings.find(({ id }) => id === reading);
  const count = found === undefined ? 1 : bandsOf(found).length;
  return bands.reduce((sum, one) => sum + one.share * ((one.band === band ? 1 - slip : 0) + slip / count), 0);
}

/** Hidden wins, else an even chance among those out of normal, else among all that say something. */
function shownBy(
  { readings }: BeliefTree,
  id: string,
  boards: readonly Board[],
): ReadonlyMap<string, number> {
  const found = readings.find((reading) => reading.id === id);
  if (found === undefined) throw new Error(`no reading ${id}`);
  const even = (bands: readonly string[]): ReadonlyMap<string, number> => {
    const shown = new Map<string, number>();
    for (const band of bands) shown.set(band, (shown.get(band) ?? 0) + 1 / bands.length);
    return shown;
  };
  if (boards.some(({ hidden }) => hidden.has(id))) {
    return even(found.hidden === null ? bandsOf(found) : [found.hidden]);
  }
  const speaking = boards.filter(({ silent }) => !silent.has(id));
  if (speaking.length === 0) return even(bandsOf(found));
  const bands = speaking.map((board) => board.bands.get(id) ?? '');
  const odd = bands.filter((band) => found.normal === 'any' || !found.normal.includes(band));
  return even(odd.length > 0 ? odd : bands);
}

function* combinations<T>(choices: readonly (readonly T[])[]): Generator<readonly T[]> {
  const [first, ...others] = choices;
  if (first === undefined) {
    yield [];
    return;
  }
  for (const one of first) for (const rest of combinations(others)) yield [one, ...rest];
}
