import { leaveOpen } from '../leave-open.ts';
import { only, report } from '../link-context.ts';
import { placeIn } from '../place-in.ts';
import type { LinkKind } from './link-kind.ts';

/** A procedure's way out, linked for itself; a call leads from before it straight to the caller's target. */
export const linkEnd: LinkKind<'end'> = ({ syntax, base, from, context }) => {
  const { kind, ends } = context.beside;
  if (kind !== 'procedure') return leaveOpen(context);
  const names = ends.map(({ id }) => id);
  const { name } = syntax.end;
  if (!names.includes(name)) {
    const span = placeIn(from, syntax.end);
    const near = context.near(name, names);
    report(context, { code: 'no-end-named', name, near, ends: names }, span, { fix: only(near, span) });
  }
  return { section: { ...base, kind: 'stop', reason: [] }, sound: true, end: name };
};
