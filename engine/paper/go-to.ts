import { type Child, type Element, element } from '../markup/index.ts';
import type { PaperContext } from './paper-context.ts';

/** The address of a section on the sheet. */
export const anchorOf = (number: string): string => `s${number}`;

/** Where to go on: a link on a screen, a number and a title on paper. */
export function goTo(
  id: string,
  { numbers, sections }: PaperContext,
  form: 'number' | 'title' = 'title',
): Element {
  const section = sections.get(id);
  const number = numbers.get(id);
  if (number === undefined) return element('span', {}, `another sheet: ${section?.title ?? id}`);
  const words: Child = form === 'title' && section !== undefined && ` ${section.title}`;
  return element('a', { href: `#${anchorOf(number)}` }, `go to `, element('b', {}, number), words);
}
