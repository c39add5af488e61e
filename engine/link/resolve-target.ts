import type { LinkSyntax } from '../read/section-syntax.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { placeIn } from './place-in.ts';
import { resolveHandOver } from './resolve-hand-over.ts';

/** The id of the section that a link leads to, perhaps the one that hands over to another tree; null, and reported,
 *  where there is none. */
export function resolveTarget(link: LinkSyntax, from: number, context: LinkContext): string | null {
  const { file, section } = link;
  if (file !== null) return resolveHandOver({ ...link, file }, from, context);
  if (section === null) return null;
  const id = context.sections.get(section);
  if (id !== undefined) return id;
  const span = placeIn(from, link.span);
  const near = context.near(section, context.sections.keys());
  report(context, { code: 'no-section-named', slug: section, near }, span, {
    fix: only(near, span, (slug) => `#${slug}`),
  });
  return null;
}
