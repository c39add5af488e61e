import type { Measure } from '../model/reading.ts';
import { allNormal } from '../scale/index.ts';
import type { Dice } from './dice.ts';

type Each = Extract<Measure, { readonly kind: 'each' }>;

/** Which of many alike are out of normal, and in which band, where the whole is in `band`; in their declared order.
 *
 *      one-stuck       A5 stuck
 *      several-low     A1, A3, A6 low
 *      low+stuck       A2 low, A4 stuck, perhaps more
 */
export function oddMembers({ members, bands }: Each, band: string, dice: Dice): ReadonlyMap<string, string> {
  if (band === allNormal) return new Map();
  const [, count = '', kind = ''] = /^(one|several|all)-(.*)$/.exec(band) ?? [];
  if (count === '') return mixed(members, band.split('+'), dice);
  const hasSeveral = bands.includes(`several-${kind}`);
  const several = hasSeveral ? 2 + dice.below(Math.max(1, members.length - 2)) : members.length;
  const many = count === 'one' ? 1 : count === 'all' ? members.length : several;
  const chosen = new Set(some(members, many, dice));
  return new Map(members.filter((name) => chosen.has(name)).map((name) => [name, kind]));
}

/** Each kind at least once. */
function mixed(
  members: readonly string[],
  kinds: readonly string[],
  dice: Dice,
): ReadonlyMap<string, string> {
  const many = Math.min(members.length, kinds.length + dice.below(2));
  const chosen = some(members, many, dice).map((name, at) => [name, kinds[at] ?? dice.of(kinds)] as const);
  const found = new Map(chosen);
  return new Map(members.flatMap((name) => (found.has(name) ? [[name, found.get(name) ?? '']] : [])));
}

/** So many of them, none twice, in any order. */
function some(members: readonly string[], many: number, dice: Dice): readonly string[] {
  const left = [...members];
  return Array.from({ length: Math.min(many, members.length) }, () => {
    const [taken = ''] = left.splice(dice.below(left.length), 1);
    return taken;
  });
}
