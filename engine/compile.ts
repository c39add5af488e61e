import { describe } from './diagnostics/describe.ts';
import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { emitCompiledTree } from './emit/emit-compiled-tree.ts';
import { readFacts } from './facts/index.ts';
import { linkTree } from './link/link-tree.ts';
import type { LinkedTree } from './link/linked-tree.ts';
import type { CompiledTree } from './model/compiled-tree.ts';
import type { FrontMatter } from './model/front-matter.ts';
import { openBlock, parseFrontMatter } from './parse/index.ts';
import { readBody } from './read/read-body.ts';
import { checkRules } from './rules/index.ts';
import { splitSource } from './source/split-source.ts';

export interface Compiled {
  /** Null where anything is an error. */
  readonly tree: CompiledTree | null;
  /** What the file says with its names looked up, for whoever looks at it further; null where it is no tree. */
  readonly linked: LinkedTree | null;
  /** Everything there is to say about the file, in its order. */
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * The whole way from a text to a tree that can be walked.
 *
 *     text → source → facts ┐
 *                   → body  ┴→ linked tree → rules → compiled tree
 *
 * Never throws, whatever the text; reports everything that is wrong with it at once.
 * @param id the file's name without its ending
 */
export function compileTree(text: string, { id }: { readonly id: string }): Compiled {
  const source = splitSource(text, openBlock);
  if (source.value.front === null) return refused(source.diagnostics);
  const front = parseFrontMatter(source.value.front);
  const kind = otherKind(front.value);
  if (kind !== null) return refused([...source.diagnostics, ...front.diagnostics, kind]);
  const facts = readFacts(front.value);
  const body = readBody(source);
  const linked = linkTree(facts.value, (table, name) => front.value.spanOf([table, name], 'key'), body.value);
  const stages = [source, front, facts, body, linked, { diagnostics: checkRules(linked.value) }];
  const diagnostics = inOrder(stages.flatMap((stage) => stage.diagnostics));
  const tree = diagnostics.some(isError) ? null : emitCompiledTree(linked.value, id);
  return { tree, linked: linked.value, diagnostics };
}

const refused = (diagnostics: readonly Diagnostic[]): Compiled => ({
  tree: null,
  linked: null,
  diagnostics: inOrder(diagnostics),
});

const isError = (diagnostic: Diagnostic): boolean => describe(diagnostic).severity === 'error';

const inOrder = (diagnostics: readonly Diagnostic[]): readonly Diagnostic[] =>
  diagnostics.toSorted((a, b) => a.span.from - b.span.from || a.span.to - b.span.to);

const otherKinds: readonly unknown[] = ['procedure', 'board', 'case'];

/** A file of another kind is not half a tree: nothing else is said about it. */
function otherKind(front: FrontMatter): Diagnostic | null {
  const kind = (front.data as { readonly kind?: unknown } | null)?.kind;
  if (typeof kind !== 'string' || !otherKinds.includes(kind)) return null;
  return { code: 'not-a-tree', kind, span: front.spanOf(['kind']) };
}
