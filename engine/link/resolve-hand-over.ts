import type { Span } from '../model/span.ts';
import type { LinkSyntax } from '../read/section-syntax.ts';
import type { OtherTreeFound } from './beside.ts';
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
  const { id: tree, title } = other;
  if (link.section !== null) checkSection(link.section, other, link.file, span, context);
  const id = idOf(tree);
  const section = { kind: 'hand-over', id, title, hazards: [], blocks: [], tree } as const;
  if (!context.handOvers.has(id)) context.handOvers.set(id, { section, span });
  return id;
}

function checkSection(
  slug: string,
  { sections }: OtherTreeFound,
  path: string,
  span: Span,
  context: LinkContext,
): void {
  if (sections.has(slug)) return;
  const near = context.near(slug, sections);
  const fix = only(near, span, (one) => `${path}#${one}`);
  report(context, { code: 'no-section-there', slug, path, near }, span, { fix });
}
