import { nearest } from '../names/nearest.ts';
import { families, squash, unitsIn } from './parse-unit.ts';
import { fold, spellingsOf } from './spellings-of.ts';
import { splitQualifier } from './split-qualifier.ts';
import { rowsOf, type Unit, unitOf } from './unit.ts';
import { prefixTable, type Qualifier, qualifierTable } from './unit-table.ts';

/** What a typed unit was taken for, or why not and which units would be. */
export type TypedUnit =
  | { readonly ok: true; readonly unit: Unit; readonly remark: string | null }
  | {
      readonly ok: false;
      readonly why: string;
      readonly units: readonly string[];
      /** Power of ten that the number takes over from an impossible prefix. */
      readonly power?: number;
    };

/** @param text what stands behind the number, perhaps nothing
 *  @param wanted the reading's unit */
export function typedUnit(text: string, wanted: Unit): TypedUnit {
  const squashed = squash(text);
  if (squashed === '') return { ok: true, unit: wanted, remark: null };
  const { units, sure, bare } = candidates(squashed, wanted);
  const unit =
    units.length > 1 ? units.find(({ prefix }) => prefix === 'm' && wanted.prefix === 'm') : units[0];
  if (unit) return qualified(unit, wanted, sure, bare);
  if (units.length > 1) {
    const names = units.map(spelled);
    return { ok: false, why: `"${text}" can be ${names.join(' or ')}`, units: names };
  }
  const other = families.find((family) => unitsIn(family, squashed).units.length > 0);
  if (other !== undefined) {
    return {
      ok: false,
      why: `"${text}" is another kind of unit: this is read in ${nameOf(wanted)}`,
      units: [wanted.text],
    };
  }
  const odd = impossiblePrefix(squashed, wanted);
  if (odd) return { ok: false, why: `"${text}" is a size that is not met on a board`, ...odd };
  const near = nearestIn(squashed, wanted);
  return {
    ok: false,
    why: `"${text}" is not a unit of this reading, which is in ${nameOf(wanted)}`,
    units: near,
  };
}

interface Candidates {
  readonly units: readonly Unit[];
  readonly sure: boolean;
  /** No unit was typed, at most its prefix. */
  readonly bare: boolean;
}

function candidates(text: string, wanted: Unit): Candidates {
  const own = unitsIn(wanted.row.family, text);
  if (own.units.length > 0) return { ...own, bare: false };
  const alone = barePrefix(text, wanted);
  if (alone.units.length > 0) return alone;
  const split = wanted.row.qualified ? splitQualifier(text) : null;
  if (split === null) return alone;
  const { units, sure } =
    split.rest === '' ? { units: [wanted], sure: true } : barePrefix(split.rest, wanted);
  return { units: units.map((unit) => unitOf(unit.row, unit.prefix, split.qualifier)), sure, bare: false };
}

/** `25M` of a reading in Hz. */
function barePrefix(text: string, { row }: Unit): Candidates {
  const hits = [...row.prefixes].filter((prefix) =>
    signsOf(prefix).some((sign) => fold(sign) === fold(text)),
  );
  const exact = hits.find((prefix) => signsOf(prefix).includes(text));
  // A small m is typed for mega as readily as for milli.
  const chosen = exact !== undefined && !(exact === 'm' && hits.length > 1) ? [exact] : hits;
  return { units: chosen.map((prefix) => unitOf(row, prefix, '')), sure: exact !== undefined, bare: true };
}

function signsOf(prefix: string): readonly string[] {
  const { name, signs } = prefixTable[prefix] ?? { name: '', signs: [] };
  return [prefix, name, ...signs];
}

/** The reading's qualifier is taken on; another one is another quantity. */
function qualified(unit: Unit, wanted: Unit, sure: boolean, bare: boolean): TypedUnit {
  const { qualifier } = unit;
  const asked = wanted.qualifier;
  const fits = qualifier === asked || (asked === '' && qualifier === 'dc');
  if (!fits && qualifier !== '') {
    const as = unitOf(unit.row, unit.prefix, asked);
    return {
      ok: false,
      why: `"${unit.text}" is ${says(qualifier)}, and this reading is ${says(asked)}`,
      units: [as.text],
    };
  }
  const full = fits || unit.row.qualified !== true ? unit : unitOf(unit.row, unit.prefix, asked);
  const remark = sure && (bare || full === unit) ? null : `read as ${full.text}`;
  return { ok: true, unit: full, remark };
}

const says = (qualifier: Qualifier): string =>
  qualifier === '' ? 'a plain dc value' : qualifierTable[qualifier].says;

const nameOf = (unit: Unit): string => unit.text || 'plain numbers';

/** In a form that cannot be misread: `milliohm`, `MΩ`. */
function spelled(unit: Unit): string {
  const [name] = unit.row.names;
  return unit.prefix === 'm' && name !== undefined ? `${prefixTable.m?.name}${name}` : unit.text;
}

/** `kA` is 1000 A. */
function impossiblePrefix(text: string, { row, qualifier }: Unit) {
  const { exact } = spellingsOf(row.family);
  for (const prefix in prefixTable) {
    if (row.prefixes.includes(prefix)) continue;
    for (const sign of signsOf(prefix)) {
      const unit =
        text === sign
          ? unitOf(row, '', '')
          : text.startsWith(sign)
            ? exact.get(text.slice(sign.length))
            : undefined;
      if (unit?.prefix === '') {
        return { units: [unitOf(unit.row, '', qualifier).text], power: prefixTable[prefix]?.power ?? 0 };
      }
    }
  }
  return null;
}

function nearestIn(text: string, wanted: Unit): readonly string[] {
  const known = new Map(
    [...spellingsOf(wanted.row.family).exact].map(([spelling, unit]) => [spelling, unit.text]),
  );
  // `Mhertz` is nobody's spelling, but clear enough to offer the right one.
  for (const row of rowsOf(wanted.row.family)) {
    for (const prefix of row.prefixes) {
      for (const name of row.names) known.set(prefix + name, prefix + row.symbol);
    }
  }
  const long = [...known.keys()].filter((spelling) => spelling.length > 1);
  const clear = known.get(text);
  if (clear !== undefined) return [clear];
  const offers = nearest(text, long).map((spelling) => known.get(spelling) ?? wanted.text);
  return [...new Set([...offers, wanted.text])].slice(0, 2);
}
