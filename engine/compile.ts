import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { emitCompiledTree } from './emit/emit-compiled-tree.ts';
import { inOrder, isError } from './foreign/in-order.ts';
import { Memory } from './foreign/memory.ts';
import type { OpenFile } from './foreign/open-file.ts';
import { readBeside } from './foreign/read-beside.ts';
import type { Shelf } from './foreign/shelf.ts';
import { emptyLibrary, type Library } from './library/library.ts';
import { linkTree } from './link/link-tree.ts';
import type { LinkedTree } from './link/linked-tree.ts';
import type { CompiledTree } from './model/compiled-tree.ts';
import type { FrontMatter } from './model/front-matter.ts';

export interface Compiled {
  /** Null where anything is an error. */
  readonly tree: CompiledTree | null;
  /** Everything there is to say about the file, in its order. */
  readonly diagnostics: readonly Diagnostic[];
}

/** A tree with every name looked up, before anything is made of it. */
export interface Examined {
  /** Null where the file is no tree at all. */
  readonly linked: LinkedTree | null;
  readonly diagnostics: readonly Diagnostic[];
}

interface Place {
  /** The file's name without its ending. */
  readonly id: string;
  /** Where the file stands in the library: what it names is looked for from there. */
  readonly path?: string;
  readonly library?: Library;
  /** What was made of this file before: after an edit only what changed is made again. */
  readonly memory?: Memory;
}

/**
 * The whole way from a text to a tree that can be walked.
 *
 *     text → source → front-matter ──┬→ facts ─┐
 *                   → body ─┬→ files ┘         ├→ linked tree → rules → compiled tree
 *                           └──────────────────┘
 *
 * Never throws, whatever the text; reports everything that is wrong with it at once.
 */
export function compileTree(text: string, place: Place): Compiled {
  const { linked, diagnostics } = examine(text, place);
  const isSound = linked !== null && !diagnostics.some(isError);
  return { tree: isSound ? emitCompiledTree(linked, place.id) : null, diagnostics };
}

/** The way as far as it can be told what is wrong with the file: what an editor asks for at each keystroke. */
export function examine(
  text: string,
  { id, path = `${id}.md`, library = emptyLibrary, memory = new Memory() }: Place,
): Examined {
  return examineTree(memory.open(text), path, memory.shelfOf(library), memory);
}

/** The same for a file that is open already. */
export function examineTree(file: OpenFile, path: string, shelf: Shelf, memory = new Memory()): Examined {
  const { source, front } = file;
  if (front === null) return { linked: null, diagnostics: inOrder(source.diagnostics) };
  const kind = otherKind(front.value);
  if (kind !== null)
    return { linked: null, diagnostics: inOrder([...source.diagnostics, ...front.diagnostics, kind]) };
  const { body } = file;
  const beside = readBeside(file, path, 'tree', shelf);
  const facts = memory.factsOf(front.value, beside.value.foreign);
  const placeOf = (table: string, name: string) => front.value.spanOf([table, name], 'key');
  const linked = linkTree(facts.value, placeOf, body.value, beside.value, memory.links);
  const rules = { diagnostics: memory.rules.check(linked.value) };
  const stages = [source, front, body, beside, facts, linked, rules];
  return { linked: linked.value, diagnostics: inOrder(stages.flatMap((stage) => stage.diagnostics)) };
}

const otherKinds: readonly unknown[] = ['procedure', 'shared', 'board', 'case'];

/** A file of another kind is not half a tree: nothing else is said about it. */
function otherKind(front: FrontMatter): Diagnostic | null {
  const kind = (front.data as { readonly kind?: unknown } | null)?.kind;
  if (typeof kind !== 'string' || !otherKinds.includes(kind)) return null;
  return { code: 'not-a-tree', kind, span: front.spanOf(['kind']) };
}
