import {
  Composer,
  isAlias,
  isMap,
  isScalar,
  isSeq,
  type Node,
  type Pair,
  Parser,
  Scalar,
  type YAMLMap,
} from 'yaml';
import type { Span } from '../../model/span.ts';
import type { FactNode, FactPair } from './fact-node.ts';
import { specialSpaces } from './special-space.ts';
import { commentsOf, depthOf } from './tokens.ts';
import type { Trouble, TroubleKind } from './trouble.ts';
import { lineAt } from './value-at.ts';

/** Nothing in the facts needs more than six levels. */
export const depthLimit = 20;

export interface YamlReading {
  /** Null where the text is no table. */
  readonly pairs: readonly FactPair[] | null;
  readonly troubles: readonly Trouble[];
}

const options = { schema: 'failsafe', uniqueKeys: false, prettyErrors: false, merge: false } as const;
const gluedPair = new RegExp(`^[\\w-]+:(?:[${specialSpaces}]|(?!//)[^\\s:])`);
const specialDash = new RegExp(`^-[${specialSpaces}]`);

/** Reads a table of facts. Every scalar is text; what is refused or suspicious is a trouble. */
export function readYaml(text: string): YamlReading {
  const tokens = [...new Parser().parse(text)];
  const depth = depthOf(tokens, text, depthLimit);
  if (depth > depthLimit) {
    const trouble: Trouble = { kind: 'too-deep', from: 0, to: text.length, code: String(depth), message: '' };
    return { pairs: null, troubles: [trouble] };
  }
  const [document] = new Composer(options).compose(tokens, true, text.length);
  const errors = (document?.errors ?? []).map(({ code, message, pos: [from, to] }): Trouble => {
    const end = Math.min(text.length, to);
    return { kind: 'error', from: Math.min(from, end), to: end, code, message };
  });
  const reader = new NodeReader(text);
  const contents = document?.contents ?? null;
  const pairs = isMap(contents) ? reader.pairs(contents as YAMLMap<Node | null, Node | null>) : null;
  if (pairs === null && text.trim() !== '') reader.report('no-table', 0, text.trimEnd().length);
  const comments = commentsOf(tokens, text).map(
    (span): Trouble => ({ ...span, kind: 'comment', code: '', message: '' }),
  );
  return { pairs, troubles: [...errors, ...reader.troubles, ...comments] };
}

class NodeReader {
  readonly troubles: Trouble[] = [];
  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  report(kind: TroubleKind, from: number, to: number, message = '', other?: Span): void {
    this.troubles.push({ kind, from, to, code: '', message, ...(other && { other }) });
  }

  pairs(map: YAMLMap<Node | null, Node | null>): readonly FactPair[] {
    this.properties(map);
    const pairs: FactPair[] = [];
    const known = new Map<string, FactPair>();
    for (const [index, { key, value }] of map.items.entries()) {
      const [from, to] = key?.range ?? [0, 0];
      if (!isScalar(key) || typeof key.value !== 'string' || key.value === '' || this.isExplicit(from)) {
        this.report('key-is-no-text', from, Math.max(from, to));
        continue;
      }
      this.properties(key);
      const name = key.value;
      const first = known.get(name);
      if (value === null || value === undefined) {
        if (map.flow) this.report('lone-key', from, to, name, this.cutValue(map, index));
      } else if (name === '<<' || name === '__proto__') this.report('refused-key', from, to, name);
      else if (first !== undefined) this.report('duplicate-key', from, to, name, first);
      else {
        const pair = { key: name, from, to, value: this.node(value) };
        known.set(name, pair);
        pairs.push(pair);
      }
    }
    return pairs;
  }

  private node(node: Node): FactNode {
    this.properties(node);
    const [from, to] = node.range ?? [0, 0, 0];
    if (isMap(node)) {
      const pairs = this.pairs(node as YAMLMap<Node | null, Node | null>);
      return { kind: 'table', from, to: this.trimmed(from, to), pairs };
    }
    if (isSeq(node)) {
      const items = node.items.map((item) => this.node(item as Node));
      return { kind: 'list', from, to: this.trimmed(from, to), items };
    }
    if (isScalar(node)) {
      return { kind: 'text', from, to: this.trimmed(from, to), value: this.scalar(node, from, to) };
    }
    return { kind: 'text', from, to, value: this.text.slice(from, to) };
  }

  private scalar(node: Scalar, from: number, to: number): string {
    const value = String(node.value);
    if (node.type === Scalar.PLAIN) {
      if (specialDash.test(value)) this.report('special-dash', from, from + 2);
      if (gluedPair.test(value) && this.beginsLine(from)) this.report('glued-pair', from, to);
    }
    if (
      node.type === Scalar.BLOCK_FOLDED &&
      value.trim() === '' &&
      this.text.charAt(from + 1).trim() !== ''
    ) {
      this.report('empty-block', from, to);
    }
    return value;
  }

  /** Anchors, tags and aliases. */
  private properties(node: Node): void {
    const [from, to] = node.range ?? [0, 0, 0];
    const what = isScalar(node) ? 'text' : '';
    if (isAlias(node)) this.report('alias', from, to, 'text');
    else if (node.anchor !== undefined) this.report('anchor', ...this.markBefore('&', from), what);
    else if (node.tag !== undefined) this.report('tag', ...this.markBefore('!', from), what);
  }

  private markBefore(mark: string, at: number): [number, number] {
    const from = Math.max(0, this.text.lastIndexOf(mark, at));
    const length = this.text.slice(from).search(/[\s,}\]]|$/);
    return [from, from + length];
  }

  private beginsLine(at: number): boolean {
    return this.text.slice(lineAt(this.text, at).from, at).trim() === '';
  }

  private isExplicit(at: number): boolean {
    return /\?\s+$/.test(this.text.slice(Math.max(0, at - 20), at));
  }

  /** For a lone key behind `{ expect: 3`: from the `3` to the end of the last lone key of the row. */
  private cutValue(map: YAMLMap<Node | null, Node | null>, index: number): Span | undefined {
    const lone = (pair: Pair<Node | null, Node | null> | undefined): boolean =>
      pair !== undefined && pair.value === null;
    let [first, last] = [index, index];
    while (first > 0 && lone(map.items[first])) first -= 1;
    while (lone(map.items[last + 1])) last += 1;
    const value = map.items[first]?.value;
    const end = map.items[last]?.key?.range?.[1];
    if (!isScalar(value) || value.type !== Scalar.PLAIN || value.range == null || end === undefined)
      return undefined;
    return { from: value.range[0], to: end };
  }

  private trimmed(from: number, to: number): number {
    return from + this.text.slice(from, to).trimEnd().length;
  }
}
