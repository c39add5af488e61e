import type { Formula } from '../model/formula.ts';
import type { Block, Inline } from '../model/prose.ts';

/** How a value in the prose is shown now: `66 MHz`. */
export type ShowValue = (formula: Formula) => string;

/** Prose for a terminal: paragraphs wrapped at `width`, lists with their marks, tables in columns. */
export function plainText(blocks: readonly Block[], show: ShowValue, width = 80): string {
  return blocks.map((block) => blockText(block, show, width)).join('\n\n');
}

export function inlineText(inlines: readonly Inline[], show: ShowValue): string {
  return inlines.map((inline) => inlineParts[inline.type](inline as never, show)).join('');
}

type Parts = {
  readonly [Type in Inline['type']]: (inline: Extract<Inline, { type: Type }>, show: ShowValue) => string;
};

const childText = ({ children }: { readonly children: readonly Inline[] }, show: ShowValue): string =>
  inlineText(children, show);

const inlineParts: Parts = {
  text: ({ value }) => value.replace(/\s*\n\s*/g, ' '),
  code: ({ value }) => value,
  value: ({ formula, written }, show) =>
    written.startsWith('=') ? show(formula) : `${written} (${show(formula)})`,
  emphasis: childText,
  strong: childText,
  link: (link, show) =>
    link.url.startsWith('#') ? childText(link, show) : `${childText(link, show)} (${link.url})`,
  image: ({ alt }) => (alt === '' ? '[picture]' : `[picture: ${alt}]`),
  break: () => '\n',
};

type Blocks = {
  readonly [Type in Block['type']]: (
    block: Extract<Block, { type: Type }>,
    show: ShowValue,
    width: number,
  ) => string;
};

const blockParts: Blocks = {
  paragraph: ({ children }, show, width) => wrap(inlineText(children, show), width),
  heading: ({ children }, show, width) => wrap(inlineText(children, show).toUpperCase(), width),
  list: ({ ordered, start, items }, show, width) =>
    items
      .map((item, index) => {
        const mark = ordered ? `${start + index}. ` : '- ';
        return hang(mark, plainText(item, show, width - mark.length));
      })
      .join('\n'),
  quote: ({ children }, show, width) => prefix('| ', plainText(children, show, width - 2)),
  preformatted: ({ value }) => prefix('    ', value),
  table: ({ rows }, show) => columns(rows.map((row) => row.map((cell) => inlineText(cell, show)))),
  rule: (_block, _show, width) => '-'.repeat(Math.min(width, 24)),
};

const blockText = (block: Block, show: ShowValue, width: number): string =>
  blockParts[block.type](block as never, show, width);

const prefix = (mark: string, text: string): string =>
  text
    .split('\n')
    .map((line) => mark + line)
    .join('\n');

const hang = (mark: string, text: string): string =>
  text
    .split('\n')
    .map((line, index) => (index === 0 ? mark : ' '.repeat(mark.length)) + line)
    .join('\n');

/** Breaks lines between words; a word longer than the line stands alone. */
export function wrap(text: string, width: number): string {
  return text
    .split('\n')
    .map((line) =>
      line
        .split(' ')
        .reduce<string[]>((lines, word) => {
          const last = lines.at(-1);
          if (last !== undefined && last.length + word.length + 1 <= width)
            lines[lines.length - 1] = `${last} ${word}`;
          else lines.push(word);
          return lines;
        }, [])
        .join('\n'),
    )
    .join('\n');
}

/** Cells side by side, each column as wide as its widest cell. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths = rows.reduce<number[]>(
    (known, row) => row.map((cell, index) => Math.max(known[index] ?? 0, cell.length)),
    [],
  );
  return rows
    .map((row) =>
      row
        .map((cell, index) => cell.padEnd(widths[index] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
