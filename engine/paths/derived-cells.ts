import type { Demand } from './cells.ts';
import { bandsIn, type Name, type Names, setOf } from './names.ts';

/** More combinations of input bands than this are not looked through. */
const most = 1024;

/** Sets of classes by name: combinations that can be. */
type Box = ReadonlyMap<string, bigint>;

const known = new WeakMap<Names, Map<string, readonly Box[] | null>>();

/**
 * What can be of a derived reading together with its inputs, as boxes that do not overlap; null where its inputs have
 * too many combinations, so that nothing is ruled out.
 *
 *     clock_factor low    cpu_clk slow    pci_clk slow
 *     clock_factor good   cpu_clk good    pci_clk slow, good
 */
function boxesOf(derived: Name, names: Names): readonly Box[] | null {
  const cache = known.get(names) ?? new Map<string, readonly Box[] | null>();
  known.set(names, cache);
  const before = cache.get(derived.id);
  if (before !== undefined) return before;
  const inputs = (derived.derived?.inputs ?? []).flatMap((id) => names.byId.get(id) ?? []);
  const combinations = inputs.reduce((product, { classes }) => product * classes.length, 1);
  const boxes = combinations > most ? null : boxesFrom(derived, inputs, new Map(), names);
  cache.set(derived.id, boxes);
  return boxes;
}

/** Goes through the classes of the first input; those behind which everything is the same become one box. */
function boxesFrom(
  derived: Name,
  [first, ...others]: readonly Name[],
  inputs: ReadonlyMap<string, readonly string[]>,
  names: Names,
): readonly Box[] {
  if (first === undefined) {
    const reading = derived.derived?.reading;
    const allowed = reading === undefined ? 0n : setOf(derived, names.possible(reading, inputs));
    return [new Map([[derived.id, allowed === 0n ? derived.all : allowed]])];
  }
  const alike = new Map<string, { set: bigint; readonly boxes: readonly Box[] }>();
  for (const at of first.classes.keys()) {
    const set = 1n << BigInt(at);
    const boxes = boxesFrom(derived, others, new Map([...inputs, [first.id, bandsIn(first, set)]]), names);
    const key = boxes.map((box) => [...box].join(' ')).join('|');
    const same = alike.get(key);
    if (same === undefined) alike.set(key, { set, boxes });
    else same.set |= set;
  }
  return [...alike.values()].flatMap(({ set, boxes }) =>
    boxes.map((box) => new Map([...box, [first.id, set] as const])),
  );
}

/** The combinations that a derived reading leaves possible, each a demand on `scope`; null where it is not known. */
export function demandsOfDerived(
  derived: Name,
  scope: readonly Name[],
  names: Names,
): readonly Demand[] | null {
  const places = new Map(scope.map(({ id }, place) => [id, place]));
  return (
    boxesOf(derived, names)?.map((box) =>
      [...box].flatMap(([id, set]) => {
        const place = places.get(id);
        return place === undefined ? [] : [{ place, set }];
      }),
    ) ?? null
  );
}
