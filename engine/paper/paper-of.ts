import { type Element, element, printHtml } from '../markup/index.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { targetsOf } from '../outline/targets-of.ts';
import { blank } from './blanks.ts';
import { headHtml } from './head-html.ts';
import { type PaperContext, paperContext } from './paper-context.ts';
import { sectionHtml } from './section-html.ts';
import { style } from './style.ts';

export interface PaperOptions {
  /** ISO 8601 day of printing; left out where it is not to stand on the sheet. */
  readonly day?: string;
}

/** A tree as a procedure on paper: one HTML document for A4 or Letter, in grey as good as in colour, that needs nothing
 *  else and runs nothing. Sections are numbered in the order of the file; conditions are boxes to tick. */
export function paperOf(tree: CompiledTree, { day }: PaperOptions = {}): string {
  const context = paperContext(tree);
  const from = comingFrom(context);
  return printHtml(
    element(
      'html',
      { lang: 'en' },
      element(
        'head',
        {},
        element('meta', { charset: 'utf-8' }),
        element('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
        element('meta', {
          'http-equiv': 'Content-Security-Policy',
          content: "default-src 'none'; style-src 'unsafe-inline'; img-src data:",
        }),
        element('title', {}, tree.title),
        element('style', {}, style),
      ),
      element(
        'body',
        {},
        headHtml(context),
        element(
          'main',
          {},
          tree.sections.map((section) => sectionHtml(section, context, from.get(section.id) ?? [])),
        ),
        putBack(),
        element(
          'footer',
          {},
          `${tree.id}, version ${tree.digest.slice(0, 12)}${day === undefined ? '' : `, printed ${day}`}`,
        ),
      ),
    ),
  );
}

/** Numbers of the sections that lead to each section. */
function comingFrom({ tree, numbers }: PaperContext): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, readonly string[]>();
  for (const section of tree.sections)
    for (const target of targetsOf(section))
      found.set(target, [...(found.get(target) ?? []), numbers.get(section.id) ?? '']);
  return found;
}

/** What was changed for the search and must be as before when the proof is taken. */
const putBack = (): Element =>
  element(
    'section',
    { class: 'put-back' },
    element('h2', {}, 'To put back before the proof'),
    element('p', {}, 'Lifted legs, wires, jumpers, parts and cards that are out.'),
    Array.from({ length: 6 }, () => element('p', {}, blank('long'))),
  );
