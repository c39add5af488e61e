import { isApart, leftTogether } from './left-together.ts';
import { type Signs, type SignsGround, signsGround } from './signs.ts';

/** Three things that go by the name of mean ambiguity group; they differ. */
export interface MeanGroup {
  /** Over boards: faults count by how often they are met. This is the one that is printed. */
  readonly rateWeighted: number;
  /** Over faults, each alike: Σ size² / faults. */
  readonly perFault: number;
  /** Over groups: faults / groups. */
  readonly perGroup: number;
}

/** Figures on what readings can tell, whatever the order. */
export interface Testability {
  /** Share of the boards on which some reading is out of normal. 0..1. */
  readonly detected: number;
  /** Of those, the share on which 1, at most 2, at most 3 faults are left when every reading was taken. */
  readonly isolated: readonly [number, number, number];
  readonly meanGroup: MeanGroup;
  /** Faults that no reading tells apart, whatever they show; by number, largest group first. */
  readonly groups: readonly (readonly number[])[];
  /** Faults that can come to be left together all the same. */
  readonly sometimes: readonly Sometimes[];
}

export interface Sometimes {
  readonly fault: number;
  readonly other: number;
  /** In which share of the boards with `fault` the other is left as well. */
  readonly share: number;
}

/** Definitions as in IEEE 1522 and MIL-HDBK-2165: a fault counts by how often it is met; isolation is told of detected faults only. */
export function testabilityOf(signs: Signs): Testability {
  const ground = signsGround(signs);
  let detected = 0;
  const isolated = [0, 0, 0];
  let weighted = 0;
  const mean = new Map<number, { all: number; size: number; inverse: number }>();
  const together = new Map<number, Map<number, number>>();
  for (let row = 0; row < ground.rows; row += 1) {
    const weight = ground.prior[row] as number;
    const fault = ground.fault[row] as number;
    const own = mean.get(fault) ?? { all: 0, size: 0, inverse: 0 };
    const pairs = together.get(fault) ?? new Map<number, number>();
    mean.set(fault, own);
    together.set(fault, pairs);
    for (const { share, detected: seen, faults } of leftTogether(ground, row)) {
      const here = weight * share * seen;
      detected += here;
      weighted += here * faults.size;
      for (let most = 1; most <= 3; most += 1)
        if (faults.size <= most) isolated[most - 1] = (isolated[most - 1] as number) + here;
      own.all += here;
      own.size += here * faults.size;
      own.inverse += here / faults.size;
      for (const other of faults)
        if (other !== fault) pairs.set(other, (pairs.get(other) ?? 0) + weight * share);
    }
  }
  const each = [...mean.values()].filter(({ all }) => all > 0);
  const [one = 0, two = 0, three = 0] = isolated.map((share) => (detected > 0 ? share / detected : 0));
  const groups = groupsOf(ground);
  return {
    detected,
    isolated: [one, two, three],
    meanGroup: {
      rateWeighted: detected > 0 ? weighted / detected : 0,
      perFault: each.reduce((sum, { size, all }) => sum + size / all, 0) / Math.max(1, each.length),
      perGroup:
        each.length /
        Math.max(
          1e-12,
          each.reduce((sum, { inverse, all }) => sum + inverse / all, 0),
        ),
    },
    groups,
    sometimes: sometimesOf(ground, together, groups),
  };
}

/** Faults that can show the same in every reading, as connected by pairs. */
function groupsOf(ground: SignsGround): readonly (readonly number[])[] {
  const faults = [...new Set(ground.fault)];
  const leader = new Map(faults.map((fault) => [fault, fault]));
  const lead = (fault: number): number => {
    const above = leader.get(fault) ?? fault;
    return above === fault ? fault : lead(above);
  };
  for (const [at, one] of faults.entries()) {
    for (const other of faults.slice(at + 1))
      if (areAlike(ground, one, other)) leader.set(lead(other), lead(one));
  }
  const groups = new Map<number, number[]>();
  for (const fault of faults) groups.set(lead(fault), [...(groups.get(lead(fault)) ?? []), fault]);
  return [...groups.values()]
    .filter((group) => group.length > 1)
    .toSorted((one, other) => other.length - one.length);
}

/** Whether whatever one fault shows the other can show as well, and the other way round. */
function areAlike(ground: SignsGround, one: number, other: number): boolean {
  const rowsOf = (fault: number): readonly number[] =>
    Array.from({ length: ground.rows }, (_, row) => row).filter((row) => ground.fault[row] === fault);
  const covered = (rows: readonly number[], by: readonly number[]): boolean =>
    rows.every((row) => by.some((over) => !isApart(ground, row, over) && covers(ground, over, row)));
  return covered(rowsOf(one), rowsOf(other)) && covered(rowsOf(other), rowsOf(one));
}

/** Whether a row can show everything that another one can. */
function covers({ columns, support }: SignsGround, over: number, row: number): boolean {
  for (let column = 0; column < columns; column += 1) {
    const mine = support[row * columns + column] as number;
    const theirs = support[over * columns + column] as number;
    if (theirs !== 0 && (mine & ~theirs) !== 0) return false;
  }
  return true;
}

function sometimesOf(
  ground: SignsGround,
  together: ReadonlyMap<number, ReadonlyMap<number, number>>,
  groups: readonly (readonly number[])[],
): readonly Sometimes[] {
  const weightOf = (fault: number): number =>
    ground.prior.reduce((sum, weight, row) => (ground.fault[row] === fault ? sum + weight : sum), 0);
  const alike = (one: number, other: number): boolean =>
    groups.some((group) => group.includes(one) && group.includes(other));
  return [...together]
    .flatMap(([fault, others]) =>
      [...others].map(([other, weight]) => ({ fault, other, share: weight / weightOf(fault), weight })),
    )
    .filter(({ fault, other, share }) => share > 1e-9 && !alike(fault, other))
    .toSorted((one, other) => other.weight - one.weight)
    .map(({ fault, other, share }) => ({ fault, other, share }));
}
