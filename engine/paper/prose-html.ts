import { namesIn } from '../formula/index.ts';
import { type Child, element } from '../markup/index.ts';
import type { Block, Inline } from '../model/prose.ts';
import { callerOf } from '../outline/section-numbers.ts';
import { goTo } from './go-to.ts';
import type { PaperContext } from './paper-context.ts';

/** Where a piece of prose stands: links to sections count from there. */
export interface ProsePlace extends PaperContext {
  /** Section id; empty above the first section. */
  readonly within: string;
}

type Inlines = {
  readonly [Type in Inline['type']]: (inline: Extract<Inline, { type: Type }>, place: ProsePlace) => Child;
};

const inlines: Inlines = {
  text: ({ value }) => value,
  code: ({ value }) => element('code', {}, value),
  value: ({ written, formula }, { usualOf }) => {
    const value = usualOf(formula);
    // What a caller gave to a procedure is that in every job.
    if (value !== null && namesIn(formula).length === 0) return value;
    const name = element('code', {}, written.replace(/^=\s*/, ''));
    return value === null ? name : [name, ` (usually ${value})`];
  },
  emphasis: ({ children }, place) => element('em', {}, inlinesHtml(children, place)),
  strong: ({ children }, place) => element('strong', {}, inlinesHtml(children, place)),
  link: ({ url, children }, place) => {
    const words = inlinesHtml(children, place);
    const section = url.startsWith('#') ? sectionAt(url.slice(1), place) : null;
    if (section !== null) return [words, ' (', goTo(section, place, 'number'), ')'];
    return url.startsWith('#') ? words : [words, ` (${url})`];
  },
  image: ({ url, alt }) =>
    /^data:image\/(png|jpeg|svg\+xml)[;,]/.test(url)
      ? element('img', { src: url, alt })
      : `[picture: ${alt === '' ? url : alt}]`,
  break: () => element('br'),
};

export const inlinesHtml = (list: readonly Inline[], place: ProsePlace): Child =>
  list.map((inline) => inlines[inline.type](inline as never, place));

function sectionAt(slug: string, { within, sections }: ProsePlace): string | null {
  const caller = callerOf(within);
  const id = caller === '' ? slug : `${caller}.${slug}`;
  return sections.has(id) ? id : null;
}

type Blocks = {
  readonly [Type in Block['type']]: (block: Extract<Block, { type: Type }>, place: ProsePlace) => Child;
};

const blocks: Blocks = {
  paragraph: ({ children }, place) => element('p', {}, inlinesHtml(children, place)),
  heading: ({ children }, place) => element('h4', {}, inlinesHtml(children, place)),
  list: ({ ordered, start, items }, place) =>
    element(
      ordered ? 'ol' : 'ul',
      { start: ordered && start !== 1 ? start : undefined },
      items.map((item) => element('li', {}, blocksHtml(item, place))),
    ),
  quote: ({ children }, place) => element('blockquote', {}, blocksHtml(children, place)),
  preformatted: ({ value }) => element('pre', {}, value),
  table: ({ rows: [head, ...rows], align }, place) => {
    const cells = (tag: string, row: readonly (readonly Inline[])[] = []): Child =>
      row.map((cell, column) =>
        element(tag, { class: align[column] ?? undefined }, inlinesHtml(cell, place)),
      );
    return element(
      'table',
      { class: 'prose' },
      element('thead', {}, element('tr', {}, cells('th', head))),
      element(
        'tbody',
        {},
        rows.map((row) => element('tr', {}, cells('td', row))),
      ),
    );
  },
  rule: () => element('hr'),
};

export const blocksHtml = (list: readonly Block[], place: ProsePlace): Child =>
  list.map((block) => blocks[block.type](block as never, place));
