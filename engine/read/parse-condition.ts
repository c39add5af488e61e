import type { ClauseSyntax, ConditionSyntax } from './condition-syntax.ts';
import { type ConditionProblem, conditionTokens } from './condition-tokens.ts';
import type { Named } from './named.ts';

type Quantifier = Extract<ClauseSyntax, { readonly kind: 'members' }>['quantifier'];

export interface ParsedCondition {
  /** Null where the text cannot be taken as any condition. */
  readonly condition: ConditionSyntax | null;
  readonly problems: readonly ConditionProblem[];
}

const joins = new Set([',', 'or', 'and']);
const quantifiers = ['any', 'all', 'one', 'several'] as const;

/**
 * Reads the text of a condition.
 *
 *     power_good is low, none and pci_clk is not good
 *     └──name──┘    └─bands─┘ └─────second clause──┘
 */
export function parseCondition(text: string): ParsedCondition {
  const problems: ConditionProblem[] = [];
  const tokens = conditionTokens(text, problems);
  const words = tokens.map((token) => token.name.toLowerCase()).join(' ');
  if (words === 'otherwise') return { condition: { kind: 'otherwise' }, problems };
  if (words === 'cannot read') return { condition: { kind: 'unread' }, problems };
  const clauses = new ClauseReader(tokens, text.length, problems).clauses();
  return { condition: clauses && { kind: 'clauses', clauses }, problems };
}

class ClauseReader {
  private readonly tokens: readonly Named[];
  private readonly end: number;
  private readonly problems: ConditionProblem[];
  private at = 0;

  constructor(tokens: readonly Named[], end: number, problems: ConditionProblem[]) {
    this.tokens = tokens;
    this.end = end;
    this.problems = problems;
  }

  clauses(): ClauseSyntax[] | null {
    const clauses: ClauseSyntax[] = [];
    for (;;) {
      const clause = this.clause();
      if (clause === null) return null;
      clauses.push(clause);
      if (this.at >= this.tokens.length) return clauses;
      if (!this.passJoin()) return null;
    }
  }

  /** Steps over what stands between two clauses: `and`, or a comma or `or` that should be one. */
  private passJoin(): boolean {
    const join = this.tokens[this.at];
    const next = this.tokens[this.at + 1];
    this.at += 1;
    if (join === undefined) return true;
    if (join.name === 'and') return true;
    if (join.name === ',' && next?.name === 'and') {
      this.at += 1;
      return true;
    }
    const { from, to } = join;
    if (join.name === ',' && next?.name !== 'or') {
      const insert = next !== undefined && next.from > to ? ' and' : ' and ';
      const fix = { title: 'Write "and"', edits: [{ from, to, insert }] };
      this.problems.push({ facts: { code: 'comma-before-clause', name: next?.name ?? '' }, from, to, fix });
      return true;
    }
    this.problems.push({ facts: { code: 'or-before-clause', name: next?.name ?? '' }, from, to });
    return false;
  }

  private clause(): ClauseSyntax | null {
    const first = this.tokens[this.at];
    if (first === undefined) return this.expected('a name or a band');
    if (this.isAllGood(this.at)) {
      const to = this.tokens[this.at + 1]?.to ?? first.to;
      this.at += 2;
      return { kind: 'all-good', from: first.from, to };
    }
    const members = this.membersAt(this.at);
    if (members) {
      this.at = members.next;
      if (this.tokens[this.at]?.name === 'not') return this.expected('the bands themselves');
      const bands = this.bands();
      return bands && { kind: 'members', quantifier: members.quantifier, name: members.name, bands };
    }
    if (this.lacksVerb(this.at)) return null;
    const named = this.isNamed(this.at);
    if (named) {
      this.checkIs(this.tokens[this.at + 1]);
      this.at += 2;
    }
    const not = this.tokens[this.at]?.name === 'not';
    if (not) this.at += 1;
    const bands = this.bands();
    return bands && { kind: 'bands', name: named ? first : null, not, bands };
  }

  private bands(): Named[] | null {
    const bands: Named[] = [];
    for (;;) {
      const band = this.band();
      if (band === null) return this.expected('a band');
      bands.push(band);
      const next = this.afterBandJoin();
      if (next === null) return bands;
      this.at = next;
    }
  }

  /** A band is one word; several in a row are kept together, so that linking can offer what was meant. */
  private band(): Named | null {
    const words: Named[] = [];
    for (let token = this.tokens[this.at]; token && !joins.has(token.name); token = this.tokens[this.at]) {
      words.push(token);
      this.at += 1;
    }
    const [first, last] = [words[0], words.at(-1)];
    if (first === undefined || last === undefined) return null;
    return { name: words.map((word) => word.name).join(' '), from: first.from, to: last.to };
  }

  /** Where the next band of the same clause begins, or null where the clause ends. */
  private afterBandJoin(): number | null {
    let next = this.at;
    if (this.tokens[next]?.name === ',') next += 1;
    if (this.tokens[next]?.name === 'or') next += 1;
    if (next === this.at || this.tokens[next]?.name === 'and') return null;
    const clause = this.isNamed(next) || this.isAllGood(next) || this.membersAt(next) !== null;
    return clause ? null : next;
  }

  private isNamed(at: number): boolean {
    const name = this.tokens[at]?.name;
    return name !== undefined && !joins.has(name) && this.isVerb(at + 1);
  }

  private isVerb(at: number): boolean {
    const name = this.tokens[at]?.name;
    return name === 'is' || name === 'are';
  }

  /** One reading is, many alike are. */
  private checkIs(verb: Named | undefined): void {
    if (verb?.name !== 'are') return;
    const { from, to } = verb;
    const fix = { title: 'Write "is"', edits: [{ from, to, insert: 'is' }] };
    this.problems.push({ facts: { code: 'condition-word', word: 'are', instead: 'is' }, from, to, fix });
  }

  /** `any lines stuck`: two words behind how many, and no `are` between them. */
  private lacksVerb(at: number): boolean {
    const word = this.tokens[at]?.name.toLowerCase();
    const of = this.tokens[at + 1]?.name === 'of' ? 1 : 0;
    const [name, band, next] = this.tokens.slice(at + 1 + of, at + 4 + of);
    if (!quantifiers.some((each) => each === word) || name === undefined || band === undefined) return false;
    const others = [name, band].some(
      (each) => joins.has(each.name) || each.name === 'is' || each.name === 'are',
    );
    if (others || (next && !joins.has(next.name))) return false;
    const { from } = band;
    const facts = { code: 'condition-syntax', expected: '"is" or "are"', found: band.name } as const;
    const fix = { title: 'Insert "are"', edits: [{ from, to: from, insert: 'are ' }] };
    this.problems.push({ facts, from, to: band.to, fix });
    return true;
  }

  /** `any lines are`, `one of lines is`: how many of what, and where the bands begin. */
  private membersAt(at: number): { quantifier: Quantifier; name: Named; next: number } | null {
    const word = this.tokens[at]?.name.toLowerCase();
    const quantifier = quantifiers.find((each) => each === word);
    const of = this.tokens[at + 1]?.name === 'of' && !this.isVerb(at + 2) ? 1 : 0;
    const name = this.tokens[at + 1 + of];
    if (quantifier === undefined || name === undefined || joins.has(name.name)) return null;
    return this.isVerb(at + 2 + of) ? { quantifier, name, next: at + 3 + of } : null;
  }

  private isAllGood(at: number): boolean {
    return this.tokens[at]?.name.toLowerCase() === 'all' && this.tokens[at + 1]?.name === 'good';
  }

  private expected(expected: string): null {
    const found = this.tokens[this.at];
    const at = found ?? { name: '', from: this.end, to: this.end };
    this.problems.push({
      facts: { code: 'condition-syntax', expected, found: at.name },
      from: at.from,
      to: at.to,
    });
    return null;
  }
}
