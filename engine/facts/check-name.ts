import type { NameKind } from '../diagnostics/front-matter-facts.ts';
import { functionNames } from '../formula/functions/index.ts';
import type { Path } from '../model/front-matter.ts';
import type { FactsContext } from './facts-context.ts';

const most = 60;

interface NameRules {
  readonly form: RegExp;
  readonly filler: '_' | '-';
  readonly reserved: ReadonlySet<string>;
}

/** What conditions are written with. */
const conditionWords = ['otherwise', 'and', 'or', 'is', 'not', 'all', 'any', 'cannot'];
/** What stands before or behind the name of something that clauses speak of. */
const clauseWords = [...conditionWords, 'are', 'of', 'one', 'several'];
/** What a typed row says besides names and values. */
const rowWords = [
  ...conditionWords,
  'rest',
  'other',
  'others',
  'remaining',
  'the',
  'same',
  'each',
  'every',
  'to',
];

const id: NameRules = {
  form: /^[\p{L}_][\p{L}\p{N}_]*$/u,
  filler: '_',
  reserved: new Set(clauseWords),
};
const band: NameRules = {
  form: /^[\p{L}\p{N}_][\p{L}\p{N}_-]*$/u,
  filler: '-',
  reserved: new Set(conditionWords),
};
/** `twin` is the reading of a known-good board. */
const inFormulas: NameRules = { ...id, reserved: new Set([...clauseWords, ...functionNames, 'twin']) };

const rules: Readonly<Record<NameKind, NameRules>> = {
  reading: inFormulas,
  fault: id,
  setting: inFormulas,
  parameter: inFormulas,
  band,
  option: band,
  /** `Do, 3 minutes, wait 2 hours, cards out: …` */
  condition: { ...id, reserved: new Set([...clauseWords, 'wait']) },
  'condition value': band,
  member: { ...band, reserved: new Set(rowWords) },
  /** `not found` asks for any other end. */
  end: band,
  family: band,
};

/** Names that every object of the language has: nobody needs them, and looking them up would find the object's. */
const isInherited = (name: string): boolean => name in {};

/** Whether a name can be one; told at its key or value if not. */
export function checkName(
  name: string,
  of: NameKind,
  path: Path,
  part: 'key' | 'value',
  context: FactsContext,
): boolean {
  const { form, filler, reserved } = rules[of];
  const span = context.spanOf(path, part);
  if (reserved.has(name) || isInherited(name)) {
    context.at(span, { code: 'reserved-word', name, of });
    return false;
  }
  if (name.length <= most && form.test(name)) return true;
  const better = name
    .trim()
    .replace(/[^\p{L}\p{N}_-]+/gu, filler)
    .replaceAll('-', filler);
  const instead = better.length <= most && form.test(better) && !reserved.has(better) ? better : null;
  context.at(span, { code: 'name-form', name, of, instead });
  return false;
}
