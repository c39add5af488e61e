import type { LinkSyntax } from '../read/section-syntax.ts';
import { type LinkContext, only, report } from './link-context.ts';
import { placeIn } from './place-in.ts';

/** The id of the section of this file that a link names, or null where there is none. */
export function resolveTarget(link: LinkSyntax, from: number, context: LinkContext): string | null {
  const { section } = link;
  if (link.file !== null || section === null) return null;
  if (context.sections.has(section)) return section;
  const span = placeIn(from, link.span);
  const near = context.near(section, context.sections);
  report(context, { code: 'no-section-named', slug: section, near }, span, {
    fix: only(near, span, (slug) => `#${slug}`),
  });
  return null;
}
