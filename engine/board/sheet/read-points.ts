import type { FactsContext } from '../../facts/facts-context.ts';
import { isTable, type RawTable, tableOf, textOf } from '../../facts/raw.ts';
import type { TestPoint } from '../../model/compiled-board.ts';
import type { Path } from '../../model/front-matter.ts';
import type { Reading } from '../../model/reading.ts';
import { nearest } from '../../names/nearest.ts';
import { checkSharedName } from './check-shared-name.ts';

/** Where to touch, by reading. */
export function readPoints(
  data: RawTable,
  pictures: readonly string[],
  shared: readonly Reading[],
  context: FactsContext,
): Readonly<Record<string, readonly TestPoint[]>> {
  const table = tableOf(data.points);
  const used = new Set<string>();
  const points = context.keysOf(['points'], table).map((reading) => {
    const raw = table[reading];
    const path = ['points', reading];
    checkSharedName(reading, 'reading', shared, path, context);
    const found = (Array.isArray(raw) ? raw : [raw]).flatMap((one, index): readonly TestPoint[] => {
      if (!isTable(one)) return [];
      const point = readPoint(one, Array.isArray(raw) ? [...path, index] : path, pictures, context);
      for (const picture of picturesMeant(one.picture, pictures)) used.add(picture);
      return [point];
    });
    return [reading, found] as const;
  });
  for (const picture of pictures) {
    if (!used.has(picture)) context.atKey(['pictures', picture], { code: 'unused-picture', picture });
  }
  return Object.fromEntries(points.filter(([, found]) => found.length > 0));
}

/** The picture of that name, or those that were probably meant: they are not told to be unused as well. */
const picturesMeant = (name: unknown, pictures: readonly string[]): readonly string[] =>
  typeof name !== 'string' || pictures.includes(name) ? [String(name)] : nearest(name.slice(0, 60), pictures);

function readPoint(raw: RawTable, path: Path, pictures: readonly string[], context: FactsContext): TestPoint {
  const is = textOf(raw.is) ?? '';
  const inWords = { is, picture: null, x: 0, y: 0 };
  const keys = ['picture', 'x', 'y'];
  const lacks = keys.filter((key) => !(key in raw));
  if (lacks.length === keys.length) return inWords;
  if (lacks.length > 0) {
    context.atKey(path, { code: 'point-place', lacks });
    return inWords;
  }
  const name = textOf(raw.picture);
  if (name !== null && !pictures.includes(name)) {
    const near = nearest(name.slice(0, 60), pictures);
    context.atValue([...path, 'picture'], { code: 'no-picture-named', name, near, pictures });
  }
  const [x, y] = (['x', 'y'] as const).map((key) => readPart(raw[key], key, path, context));
  const isPlaced = name !== null && pictures.includes(name) && x != null && y != null;
  return isPlaced ? { is, picture: name, x, y } : inWords;
}

/** `31 %` as a part of 1. */
function readPart(raw: unknown, key: 'x' | 'y', path: Path, context: FactsContext): number | null {
  const text = textOf(raw);
  if (text === null) return null;
  const [, digits] = /^(\d{1,3}(?:\.\d{1,4})?)\s*%$/.exec(text) ?? [];
  const percent = Number(digits);
  if (digits !== undefined && percent <= 100) return Number((percent / 100).toFixed(6));
  const place = [...path, key];
  const { to } = context.spanOf(place);
  const isBare = /^\d{1,2}(?:\.\d+)?$/.test(text) && Number(text) > 1;
  const fix = { title: `Write "${text} %"`, edits: [{ from: to, to, insert: ' %' }] };
  context.atValue(place, { code: 'point-per-cent', key, text }, isBare ? { fix } : {});
  return null;
}
