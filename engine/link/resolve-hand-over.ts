import type { LinkSyntax } from '../read/section-syntax.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

/** Dots part the sections of a call in ids. */
const idOf = (tree: string): string => `to:${tree.replaceAll('.', '-')}`;

/** The id of the section in which the job goes on in another tree: one for each tree. */
export function resolveHandOver(
  link: LinkSyntax & { readonly file: string },
  from: number,
  context: LinkContext,
): string | null {
  const span = placeIn(from, link.span);
  const other = context.beside.otherTree(context.within?.path ?? context.beside.path, link.file);
  if ('problem' in other) {
    const near = other.problem.code === 'no-file' ? other.problem.near : [];
    report(context, other.problem, span, { fix: only(near, span) });
    return null;
  }
  const { id: tree, title, sections } = other;
  if (link.section !== null && !sections.has(link.section)) {
    const near = context.near(link.section, sections);
    const fix = only(near, span, (slug) => `${link.file}#${slug}`);
    report(context, { code: 'no-section-there', slug: link.section, path: link.file, near }, span, { fix });
  }
  const id = idOf(tree);
  const section = { kind: 'hand-over', id, title, hazards: [], blocks: [], tree } as const;
  if (!context.handOvers.has(id)) context.handOvers.set(id, { section, span });
  return id;
}
