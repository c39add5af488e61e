import type { Box } from '../combinations/box.ts';
import type { CheckSection, Section } from '../model/section.ts';
import type { PossibleBands } from '../suspects/possible-bands.ts';
import { type Arc, arcsOf } from './arcs.ts';
import { type Cell, fitting, joined, without } from './cells.ts';
import { type CheckPlan, checkPlan } from './check-plan.ts';
import { liveNames } from './live-names.ts';
import { type Met, meetCheck } from './meet-check.ts';
import { bandsIn, type Name, type Names, namesOf } from './names.ts';
import type { CheckOnPaths, NotExact, Paths } from './paths.ts';
import { Variants } from './variants.ts';
import type { Walkable } from './walkable.ts';

/** How far the walks are told apart. */
export interface PathLimits {
  /** How many cells are looked at in all. */
  readonly steps: number;
  /** How many different sets of known bands a section is entered with. */
  readonly variants: number;
}

/** About a second. */
const usualLimits: PathLimits = { steps: 400_000, variants: 64 };

interface Seen {
  readonly taken: boolean[];
  left: readonly Cell[];
  /** Its combinations were too many. */
  crowded: boolean;
}

/**
 * Every walk through a tree, not one by one but as sets: on entering a section all that can be known of the readings that
 * are looked at again further on, as cells of bands.
 *
 *     v5 asked ─low─▶ v5 low ─▶ asked again: only its line "low" can be taken
 *        └──good──▶ v5 good ─▶ …
 *
 * Exact, with three ways out where that would take too long: sections with many different cells take them together, checks with too
 * many combinations are passed on every line, and when all steps are used up every section is looked at by itself.
 * @param possible what derived readings leave possible
 */
export function walkPaths(tree: Walkable, possible: PossibleBands, limits = usualLimits): Paths {
  return new Walk(tree, possible, limits).run() ?? new Walk(tree, possible, limits).alone();
}

class Walk {
  readonly #limits: PathLimits;
  readonly #byId: ReadonlyMap<string, Section>;
  readonly #first: Section | undefined;
  readonly #arcs: ReadonlyMap<string, readonly Arc[]>;
  readonly #names: Names;
  readonly #live: ReadonlyMap<string, readonly Name[]>;
  readonly #plans = new Map<string, CheckPlan>();
  readonly #variants = new Map<string, Variants>();
  readonly #seen = new Map<string, Seen>();
  readonly #open: { readonly section: Section; readonly cell: Cell }[] = [];
  #steps = 0;

  constructor(tree: Walkable, possible: PossibleBands, limits: PathLimits) {
    this.#limits = limits;
    this.#byId = new Map(tree.sections.map((section) => [section.id, section]));
    this.#first = tree.sections[0];
    this.#arcs = arcsOf(tree.sections);
    this.#names = namesOf(tree, possible);
    this.#live = liveNames(tree.sections, this.#arcs, this.#names);
  }

  /** Null where the steps were not enough. */
  run(): Paths | null {
    if (this.#first !== undefined) this.#enter(this.#first, this.#unknown(this.#first));
    for (let next = this.#open.shift(); next !== undefined; next = this.#open.shift()) {
      if (this.#steps > this.#limits.steps) return null;
      this.#leave(next.section, next.cell);
    }
    return this.#paths([]);
  }

  /** Every section that arcs lead to, with nothing known in any. */
  alone(): Paths {
    const reached: Section[] = this.#first === undefined ? [] : [this.#first];
    for (const section of reached) {
      this.#variantsOf(section).add(this.#unknown(section));
      if (section.kind === 'check') this.#meet(section, this.#unknown(section));
      for (const { to } of this.#arcs.get(section.id) ?? []) {
        const target = this.#byId.get(to);
        if (target !== undefined && !reached.includes(target)) reached.push(target);
      }
    }
    this.#open.length = 0;
    const why = 'looked at alone: the walks through the whole tree are too many';
    return this.#paths(reached.map(({ id }) => ({ section: id, why })));
  }

  #leave(section: Section, cell: Cell): void {
    if (section.kind === 'check') {
      this.#meet(section, cell);
      return;
    }
    const scope = this.#live.get(section.id) ?? [];
    for (const arc of this.#arcs.get(section.id) ?? []) this.#follow(arc, scope, cell);
    this.#steps += 1;
  }

  #meet(check: CheckSection, cell: Cell): void {
    const plan = this.#planOf(check);
    const seen = this.#seenOf(check);
    const known = this.#spread(cell, this.#live.get(check.id) ?? [], plan);
    const met = seen.crowded ? null : meetCheck(plan, known);
    this.#steps += met?.steps ?? 1;
    if (met === null) seen.crowded = true;
    else seen.left = [...seen.left, ...leftOf(met, plan, seen.left)];
    for (const [line, arc] of (this.#arcs.get(check.id) ?? []).entries()) {
      const cells = met?.taken[line] ?? [known];
      if (cells.length > 0) seen.taken[line] = true;
      for (const each of cells) this.#follow(arc, plan.scope, each);
    }
  }

  /** Enters the section behind an arc with what is still known there. */
  #follow({ to, forgets }: Arc, scope: readonly Name[], cell: Cell): void {
    const target = this.#byId.get(to);
    if (target === undefined) return;
    const live = this.#live.get(to) ?? [];
    const kept = live.map((name) => {
      if (forgets && !name.setting) return name.all;
      const place = scope.indexOf(name);
      return place < 0 ? name.all : (cell[place] ?? name.all);
    });
    this.#enter(target, kept);
  }

  #enter(section: Section, cell: Cell): void {
    const fresh = this.#variantsOf(section).add(cell);
    if (fresh !== null) this.#open.push({ section, cell: fresh });
  }

  #spread(cell: Cell, live: readonly Name[], { scope, all }: CheckPlan): Cell {
    const known = [...all];
    for (const [at, name] of live.entries()) known[scope.indexOf(name)] = cell[at] ?? name.all;
    return known;
  }

  #unknown(section: Section): Cell {
    return (this.#live.get(section.id) ?? []).map(({ all }) => all);
  }

  #variantsOf({ id }: Section): Variants {
    const variants = this.#variants.get(id) ?? new Variants(this.#limits.variants);
    this.#variants.set(id, variants);
    return variants;
  }

  #planOf(check: CheckSection): CheckPlan {
    const plan = this.#plans.get(check.id) ?? checkPlan(check, this.#live.get(check.id) ?? [], this.#names);
    this.#plans.set(check.id, plan);
    return plan;
  }

  #seenOf(check: CheckSection): Seen {
    const seen = this.#seen.get(check.id) ?? {
      taken: check.outcomes.map(() => false),
      left: [],
      crowded: false,
    };
    this.#seen.set(check.id, seen);
    return seen;
  }

  #paths(notExact: readonly NotExact[]): Paths {
    const checks = new Map<string, CheckOnPaths>();
    const inexact: NotExact[] = [...notExact];
    for (const [id, seen] of this.#seen) {
      const plan = this.#plans.get(id);
      if (plan === undefined) continue;
      checks.set(id, {
        taken: seen.taken,
        left: seen.left.map((cell) => lookedAt(cell, plan)),
        known: this.#knownIn(id),
      });
      if (seen.crowded) inexact.push({ section: id, why: 'too many combinations of bands to look through' });
      for (const name of plan.unlimited)
        inexact.push({ section: id, why: `what "${name}" is computed from has too many combinations` });
    }
    for (const [id, variants] of this.#variants)
      if (variants.together)
        inexact.push({ section: id, why: 'many ways lead here: what is known on them is taken together' });
    return { reached: new Set(this.#variants.keys()), checks, notExact: inexact };
  }

  #knownIn(section: string): Box {
    const live = this.#live.get(section) ?? [];
    const [first, ...others] = this.#variants.get(section)?.cells ?? [];
    const hull = first === undefined ? [] : others.reduce(joined, first);
    return Object.fromEntries(
      live.flatMap((name, at) => {
        const set = hull[at] ?? name.all;
        return set === name.all ? [] : [[name.id, bandsIn(name, set)] as const];
      }),
    );
  }
}

/** The combinations of the check's own names that no outcome takes and that were not seen before. */
function leftOf({ left }: Met, { looked, all }: CheckPlan, before: readonly Cell[]): readonly Cell[] {
  const fresh: Cell[] = [];
  for (const cell of left) {
    const own = all.map((every, place) => (looked.includes(place) ? (cell[place] ?? every) : every));
    let parts: readonly Cell[] = [own];
    for (const known of [...before, ...fresh]) {
      const demand = looked.map((place) => ({ place, set: known[place] ?? 0n }));
      parts = parts.flatMap((part) => (fitting(part, demand) === null ? [part] : without(part, demand)));
    }
    fresh.push(...parts);
  }
  return fresh;
}

const lookedAt = (cell: Cell, { scope, looked }: CheckPlan): Box =>
  Object.fromEntries(
    looked.flatMap((place) => {
      const name = scope[place];
      return name === undefined ? [] : [[name.id, bandsIn(name, cell[place] ?? name.all)] as const];
    }),
  );
