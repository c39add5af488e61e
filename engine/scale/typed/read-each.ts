import type { Mark, Member } from '../../model/observation.ts';
import type { Measure } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { tidy } from '../../quantity/index.ts';
import type { Read } from './read.ts';
import { readSingle } from './read-single.ts';
import { type RowClause, rowClauses } from './row-clauses.ts';

type Each = Extract<Measure, { kind: 'each' }>;
type One = Read<Member['understood']>;

/** What was typed for each of many alike, in their declared order. */
interface ReadRow {
  readonly members: readonly (One & { readonly name: string })[];
  /** How the values behaved, where one word was given. */
  readonly mark: Mark | null;
}

const longest = 2000;

/** Reads a row: `A3 stuck, rest good`, `A0 4.9; A1 5.0; rest the same`, `all good`, `A0-A3 stuck, A4 floats, rest moves`; or
 *  one value for each member in order: `4.9; 5.0; 5.1`. */
export function readEach(measure: Each, typed: string): Taken<ReadRow> {
  const taken =
    typed.length > longest
      ? refuse(`This is ${typed.length} characters long, and a row has at most ${longest}`)
      : readRow(measure, typed);
  if (taken.ok) return taken;
  const { text, offers } = taken.refusal;
  const sound = [...new Set([...offers, ...alike(measure)])].filter((offer) => readRow(measure, offer).ok);
  return { ok: false, refusal: { text, offers: sound.slice(0, 4) } };
}

/** Rows in which everybody shows the same. */
function alike({ of, normal }: Each): readonly string[] {
  const single = readSingle(of, '');
  return [...normal, ...(single.ok ? [] : single.refusal.offers)].map((value) => `all ${value}`);
}

function readRow(measure: Each, typed: string): Taken<ReadRow> {
  const { members } = measure;
  const text = typed.trim();
  if (text === '') return refuse('Nothing was typed');
  const isSame = (value: string): boolean => /^(?:the )?same$/i.test(value);
  const clauses = rowClauses(text, members, (value) => isSame(value) || readOne(measure, value).ok);
  const inOrder = clauses.length === members.length && clauses.every(({ whom }) => whom.length === 0);
  const told = new Map<string, One>();
  let rest: One | null = null;
  let last: One | null = null;
  for (const [at, { whom, value }] of clauses.entries()) {
    const about: RowClause['whom'] = inOrder ? members.slice(at, at + 1) : whom;
    if (about.length === 0) return nobody(measure, value);
    const one: Taken<One> =
      isSame(value) && last !== null ? { ok: true, value: last } : readOne(measure, value);
    if (!one.ok) return unclear(about, one.refusal, measure);
    last = one.value;
    if (about === 'rest') {
      if (rest !== null) return refuse('The row says twice what the rest is');
      rest = one.value;
      continue;
    }
    for (const name of about) {
      if (told.has(name)) return refuse(`"${name}" stands in the row twice`);
      told.set(name, one.value);
    }
  }
  const untold = members.filter((name) => !told.has(name));
  if (rest === null && untold.length > 0) return missing(untold, text, measure);
  const row = members.flatMap((name) => {
    const one = told.get(name) ?? rest;
    return one === null ? [] : [{ ...one, name }];
  });
  const marks = [...new Set(row.map(({ mark }) => mark).filter((mark) => mark !== null))];
  return { ok: true, value: { members: row, mark: marks.length === 1 ? (marks[0] ?? null) : null } };
}

/** What one member shows; `good`, or the name of a normal band, says as much as a value in it. */
function readOne({ of, normal }: Each, value: string): Taken<One> {
  const read = readSingle(of, value);
  if (read.ok) return read;
  const text = tidy(value).toLowerCase();
  const named = normal.find((band) => band.toLowerCase() === text);
  const band =
    named ?? (/^(?:normal|good|ok|fine)$/.test(text) && normal.length === 1 ? normal[0] : undefined);
  if (band === undefined) return read;
  return {
    ok: true,
    value: { understood: { kind: 'option', option: band }, mark: null, none: false, remarks: [] },
  };
}

const shown = (value: string): string => value.slice(0, 64);

const few = (names: readonly string[]): string =>
  names.length > 6 ? `${names.slice(0, 5).join(', ')} and ${names.length - 5} more` : names.join(', ');

function nobody({ members, normal: [normal] }: Each, value: string): Taken<never> {
  const offers = normal === undefined ? [] : [`${value}, rest ${normal}`];
  return refuse(
    `"${shown(value)}" does not say which one it is about: begin with a name (${few(members)}), "rest" or "all"`,
    [`all ${value}`, ...offers],
  );
}

function unclear(
  about: RowClause['whom'],
  { text, offers }: { readonly text: string; readonly offers: readonly string[] },
  { normal: [normal] }: Each,
): Taken<never> {
  const whom = about === 'rest' ? 'all' : about.join(' ');
  const rest = about === 'rest' || normal === undefined ? '' : `, rest ${normal}`;
  return refuse(
    `${about === 'rest' ? 'The rest' : few(about)}: ${text}`,
    offers.map((offer) => `${whom} ${offer}${rest}`),
  );
}

function missing(untold: readonly string[], text: string, { normal: [normal] }: Each): Taken<never> {
  const is = untold.length === 1 ? 'is' : 'are';
  return refuse(
    `${few(untold)} ${is} not told: name ${untold.length === 1 ? 'it' : 'them'}, or end with "rest" and what the rest shows`,
    normal === undefined ? [] : [`${text}, rest ${normal}`],
  );
}

const refuse = (text: string, offers: readonly string[] = []): Taken<never> => ({
  ok: false,
  refusal: { text, offers },
});
