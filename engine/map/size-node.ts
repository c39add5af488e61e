import type { MapNode, MapSymbol } from './map-graph.ts';
import { textWidth } from './text-width.ts';
import { wrapText } from './wrap-text.ts';

/** One line of text inside a symbol; the anchor is the middle unless `start`. */
export interface TextLine {
  readonly text: string;
  readonly style: 'title' | 'note' | 'words' | 'number';
  readonly x: number;
  /** Base line. */
  readonly y: number;
  readonly anchor: 'middle' | 'start';
}

/** How large a symbol is and where its text stands, counted from its upper left corner. */
export interface Sized {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly TextLine[];
}

export const letter = { title: 14, note: 12, words: 12.5, number: 14 } as const;
const leading = { title: 18, note: 16, words: 16, number: 18 } as const;

/** Room between text and outline, by symbol: left and right, above, below. */
const padding: Readonly<
  Record<MapSymbol, { readonly x: number; readonly top: number; readonly bottom: number }>
> = {
  terminator: { x: 20, top: 9, bottom: 9 },
  process: { x: 12, top: 9, bottom: 9 },
  'manual-input': { x: 12, top: 22, bottom: 9 },
  'predefined-process': { x: 24, top: 9, bottom: 9 },
  decision: { x: 0, top: 0, bottom: 0 },
  connector: { x: 0, top: 0, bottom: 0 },
  words: { x: 5, top: 3, bottom: 3 },
};

const most = 176;
const least = 84;
export const diamond = { width: 34, height: 24 };
export const circle = 17;

type Row = Pick<TextLine, 'text' | 'style'>;

export function sizeNode(node: MapNode): Sized {
  switch (node.symbol) {
    case 'decision':
      return { ...diamond, lines: [] };
    case 'connector':
      return sizeConnector(node);
    case 'words':
      return sizeBox(node.symbol, rowsOf(node.notes, 'words', 132), 20);
    default: {
      const title = node.number === null ? node.title : `${node.number}  ${node.title}`;
      return sizeBox(
        node.symbol,
        [...rowsOf([title], 'title', most), ...rowsOf(node.notes, 'note', most)],
        least,
      );
    }
  }
}

const rowsOf = (texts: readonly string[], style: Row['style'], width: number): readonly Row[] =>
  texts.flatMap((each) =>
    wrapText(each, width, letter[style as 'title'], style === 'title').map((text) => ({ text, style })),
  );

function sizeBox(symbol: MapSymbol, rows: readonly Row[], narrowest: number): Sized {
  const { x, top, bottom } = padding[symbol];
  const width = even(Math.max(narrowest, ...rows.map(rowWidth)) + 2 * x);
  let y = top;
  const lines = rows.map((row): TextLine => {
    y += leading[row.style];
    return { ...row, x: width / 2, y: y - 4.5, anchor: 'middle' };
  });
  return { width, height: y + bottom, lines };
}

/** Middles fall on whole units, so that lines are sharp. */
const even = (width: number): number => 2 * Math.ceil(width / 2);

const rowWidth = ({ text, style }: Row): number => textWidth(text, letter[style], style === 'title');

/** The circle with its note on the side where no line is: below where the line ends in it, above where it begins. */
function sizeConnector({ number, notes, role }: MapNode): Sized {
  const rows = rowsOf(notes, 'note', 118);
  const radius = radiusOf(number);
  const width = even(Math.max(2 * radius, ...rows.map(rowWidth)));
  const beside = rows.length === 0 ? 0 : rows.length * leading.note + 4;
  const above = role === 'comes from';
  const top = above ? beside : 0;
  const lines = rows.map(
    (row, at): TextLine => ({
      ...row,
      x: width / 2,
      y: (above ? 0 : 2 * radius + 3) + 12 + at * leading.note,
      anchor: 'middle',
    }),
  );
  const inside: TextLine = {
    text: number ?? '',
    style: 'number',
    x: width / 2,
    y: top + radius + 5,
    anchor: 'middle',
  };
  return { width, height: 2 * radius + beside, lines: [inside, ...lines] };
}

/** A number such as 12.3.1 needs a wider circle. */
export const radiusOf = (number: string | null): number =>
  Math.max(circle, Math.ceil(textWidth(number ?? '', letter.number, true) / 2 + 5));
