/** One part of a typed row: whom it is about, and what it says of them. */
export interface RowClause {
  /** Members; `rest` for all who are not named elsewhere; empty where nobody is named. */
  readonly whom: readonly string[] | 'rest';
  /** As typed; the way it is cut from the names is the one for which `isValue` holds, if there is one. */
  readonly value: string;
}

const restWords =
  /^(?:(?:all )?(?:the )?(?:rest|others?|remaining)|all(?: of them)?|every one|each)(?![\p{L}\p{N}_])/iu;
const joint = /^(?:[\s,&]|and\b)+/i;
// "A3 = 4.9", "A3: stuck", "A3 is stuck"
const said = /^\s*(?:[=:]|is\b|are\b)?\s*/i;
// A comma between two digits is a decimal comma.
const softEnd = /(?<!\d),|,(?!\d)/;
const span = /^\s*(?:-|–|\.\.+|…|to\b)\s*/i;

/** Cuts `A3 A5 stuck, A6 4,9; rest good` into its parts. */
export function rowClauses(
  typed: string,
  members: readonly string[],
  isValue: (text: string) => boolean,
): readonly RowClause[] {
  return typed
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .flatMap((part) => partClauses(part, members, isValue));
}

function partClauses(
  part: string,
  members: readonly string[],
  isValue: (text: string) => boolean,
): readonly RowClause[] {
  const found: RowClause[] = [];
  let text = part;
  while (text !== '') {
    const cuts = cutsOf(text, members).map(({ whom, rest }) => {
      const end = softEnd.exec(rest);
      const value = (end ? rest.slice(0, end.index) : rest).trim();
      return { whom, value, after: end ? rest.slice(end.index + 1).trim() : '' };
    });
    // The most names first: a number may be the name of the next member or the value of this one.
    const cut = cuts.find(({ value }) => isValue(value)) ?? cuts[0];
    if (cut === undefined) break;
    found.push({ whom: cut.whom, value: cut.value });
    text = cut.after;
  }
  return found;
}

interface Cut {
  readonly whom: RowClause['whom'];
  readonly rest: string;
}

/** Every way to take names off the front, the most names first. */
function cutsOf(text: string, members: readonly string[]): readonly Cut[] {
  const [all] = restWords.exec(text) ?? [];
  if (all !== undefined) return [{ whom: 'rest', rest: value(text.slice(all.length)) }];
  const cuts: Cut[] = [];
  let names: readonly string[] = [];
  let rest = text;
  for (;;) {
    const next = namesAt(rest, members);
    if (next === null) break;
    names = [...names, ...next.names];
    rest = next.rest;
    cuts.unshift({ whom: names, rest: value(rest) });
    rest = rest.replace(joint, '');
  }
  return cuts.length > 0 ? cuts : [{ whom: [], rest: text }];
}

const value = (text: string): string => text.replace(said, '');

/** One name, or all from one name to another: `A0-A3`. */
function namesAt(
  text: string,
  members: readonly string[],
): { readonly names: readonly string[]; readonly rest: string } | null {
  const first = nameAt(text, members);
  if (first === null) return null;
  const after = text.slice(first.length);
  const to = span.exec(after);
  const last = to ? nameAt(after.slice(to[0].length), members) : null;
  const [from, until] = [members.indexOf(first), last === null ? -1 : members.indexOf(last)];
  if (to === null || last === null || until < from) return { names: [first], rest: after };
  return { names: members.slice(from, until + 1), rest: after.slice(to[0].length + last.length) };
}

/** The longest name the text begins with, in its own letter case before any other. */
function nameAt(text: string, members: readonly string[]): string | null {
  const begins = (same: (a: string) => string) =>
    members
      .filter((name) => same(text.slice(0, name.length)) === same(name))
      .filter((name) => /^(?![\p{L}\p{N}_]|[.,]\d)/u.test(text.slice(name.length)))
      .sort((a, b) => b.length - a.length)[0];
  return begins((name) => name) ?? begins((name) => name.toLowerCase()) ?? null;
}
