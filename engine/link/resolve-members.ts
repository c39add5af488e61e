import type { ClauseSyntax } from '../read/condition-syntax.ts';
import { bandsWhere } from '../scale/index.ts';
import { isBand, type Subject } from './is-band.ts';
import { type LinkContext, report } from './link-context.ts';
import { bandsOfOne, membersTold } from './members-told.ts';

type Members = Extract<ClauseSyntax, { readonly kind: 'members' }>;

/** The bands of many alike in which `any lines are stuck` holds; null, and reported, where they do not tell it. */
export function resolveMembers(
  { quantifier, name, bands }: Members,
  { each }: Subject,
  base: number,
  context: LinkContext,
): readonly string[] | null {
  const span = { from: base + name.from, to: base + name.to };
  if (each === null) {
    report(context, { code: 'not-many', name: name.name, band: bands[0]?.name ?? '' }, span);
    return null;
  }
  const one: Subject = { name: name.name, bands: bandsOfOne(each), each: null };
  const known = bands.filter((band) => isBand(band, one, base, context));
  if (known.length < bands.length) return null;
  const named = known.map((band) => band.name);
  const where = bandsWhere(each, quantifier, named);
  if (where && where.length > 0) return where;
  const last = bands.at(-1) ?? name;
  const place = { from: span.from, to: base + last.to };
  report(context, { code: 'members-untold', name: name.name, told: membersTold(name.name, each) }, place);
  return null;
}
