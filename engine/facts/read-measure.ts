import treeSchema from '../../schema/tree.schema.json' with { type: 'json' };
import type { Path } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';
import { isMisspelt } from './is-misspelt.ts';
import type { Known } from './known.ts';
import { isQuantity, type One, type Origin } from './origin.ts';
import { numberOf, type RawTable } from './raw.ts';
import { readMeanings } from './read-meanings.ts';
import { readOptions } from './read-options.ts';
import { readQuantity } from './read-quantity.ts';

const kindKeys = ['scale', 'expect', 'options', 'codes', 'beeps', 'tries'] as const;
const measureKeys = ['unit', ...kindKeys, 'from', 'each'];
const readingKeys = Object.keys(treeSchema.$defs.reading.properties);

const together = new Set(['unit scale', 'unit expect', 'options', 'codes', 'beeps', 'tries']);
const togetherWithLike = new Set([...together, '', 'unit', 'scale', 'expect']);
const togetherWithFrom = new Set(['unit scale', 'unit expect', 'scale', 'expect']);

/** Whether the keys say in another way than the reading it is like how it is taken. */
export const hasOwnKind = (raw: RawTable): boolean => kindKeys.some((key) => key in raw);

/** How a reading is cut into bands. Where that is not to be known, bands that the author may have meant, so
 *  that what speaks of them is not wrong as well. */
export function readMeasure(
  raw: RawTable,
  path: Path,
  origin: Origin,
  known: Known,
  context: FactsContext,
): One {
  checkKeys(raw, path, origin, context);
  const { like, from } = origin;
  if (from?.kind === 'compare') return yesOrNo;
  if ('codes' in raw) return readMeanings(raw.codes, 'codes', [...path, 'codes'], context);
  if ('beeps' in raw) return readMeanings(raw.beeps, 'beeps', [...path, 'beeps'], context);
  if ('tries' in raw) return { kind: 'tries', enough: numberOf(raw.tries) ?? usualTries };
  if ('options' in raw) {
    return { kind: 'options', options: readOptions(raw.options, [...path, 'options'], context) };
  }
  const isAsLike = like !== null && !hasOwnKind(raw) && !('unit' in raw && isQuantity(like));
  return isAsLike ? like : readQuantity(raw, path, origin, known, context);
}

/** Where the number is none, which has been told. */
const usualTries = 20;

const yesOrNo: One = {
  kind: 'options',
  options: ['yes', 'no'].map((name) => ({ name, means: null })),
};

function checkKeys(raw: RawTable, path: Path, { like, from }: Origin, context: FactsContext): void {
  const found = measureKeys.filter((key) => key in raw);
  const isMeant = measureKeys.some((key) => !(key in raw) && isMisspelt(key, raw, readingKeys));
  // What it is like could not be found: that is told, and nothing can be said of what it lacks.
  const isLikeNothing = 'like' in raw && like === null;
  if (isMeant || isLikeNothing) return void context.unsure.add(String(path.at(-1)));
  const kinds = found.filter((key) => key !== 'each' && key !== 'from');
  const isDerived = from !== null || 'from' in raw;
  if (isDerived) {
    const compares = from?.kind === 'compare';
    const useless = found.filter((key) => derivedHasNoUse(key, compares));
    for (const key of useless) context.atKey([...path, key], { code: 'derived-key', key, compares });
    const left = kinds.filter((key) => !useless.includes(key)).join(' ');
    if (compares || togetherWithFrom.has(left) || (like !== null && togetherWithLike.has(left))) return;
  } else if ((like === null ? together : togetherWithLike).has(kinds.join(' '))) return;
  context.atKey(path, { code: 'one-measure', of: 'reading', found });
}

const derivedHasNoUse = (key: string, compares: boolean): boolean =>
  ['options', 'codes', 'beeps', 'tries'].includes(key) ||
  (compares && ['unit', 'scale', 'expect'].includes(key));
