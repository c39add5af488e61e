import caseSchema from '../../schema/case.schema.json' with { type: 'json' };
import { describe } from '../diagnostics/describe.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { FactsContext } from '../facts/facts-context.ts';
import { type RawTable, tableOf, textOf } from '../facts/raw.ts';
import { validateShape } from '../facts/validate-shape.ts';
import type { Library } from '../library/library.ts';
import { resolvePath } from '../library/resolve-path.ts';
import type { Case, CaseEnd } from '../model/case.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import { nearest } from '../names/nearest.ts';
import { openBlock, parseFrontMatter } from '../parse/index.ts';
import { splitSource } from '../source/split-source.ts';
import { readCaseBody, type WrittenEnd } from './read-case-body.ts';
import { treeNamed } from './tree-named.ts';

export interface CompiledCase {
  /** Null where anything is an error. */
  readonly value: Case | null;
  readonly diagnostics: readonly Diagnostic[];
}

interface Place {
  readonly id: string;
  /** The case's own path in the library. */
  readonly path: string;
  readonly library: Library;
}

/** A case from its text: its answers, and the tree and the place that it must lead to. */
export function compileCase(text: string, { id, path, library }: Place): CompiledCase {
  const source = splitSource(text, openBlock);
  if (source.value.front === null) return { value: null, diagnostics: source.diagnostics };
  const front = parseFrontMatter(source.value.front);
  const context = new FactsContext(front.value);
  const data = validateShape(front.value, context, caseSchema);
  const body = readCaseBody(source.value);
  const found = lookUp(data, { id, path, library }, body.value.end, context);
  const diagnostics = [source, front, context, body]
    .flatMap((stage) => stage.diagnostics)
    .toSorted((a, b) => a.span.from - b.span.from);
  const isSound = !diagnostics.some((each) => describe(each).severity === 'error');
  if (!isSound || found === null) return { value: null, diagnostics };
  const settings = Object.fromEntries(
    context
      .keysOf(['settings'], tableOf(data.settings))
      .map((name) => [name, textOf(tableOf(data.settings)[name]) ?? '']),
  );
  const { answers } = body.value;
  return { value: { id, title: textOf(data.title) ?? id, ...found, settings, answers }, diagnostics };
}

/** The files a case names, and what it says of them. */
function lookUp(
  data: RawTable,
  { path, library }: Place,
  end: WrittenEnd | null,
  context: FactsContext,
): Pick<Case, 'tree' | 'board' | 'leadsTo'> | null {
  const board = fileOf('board', data, path, library, context);
  const tree = fileOf('tree', data, path, library, context);
  if (tree === null) return null;
  const compiled = treeNamed(tree.text, tree.path, library);
  if (compiled === null) {
    context.atValue(['tree'], { code: 'case-file-broken', of: 'tree', path: textOf(data.tree) ?? '' });
    return null;
  }
  checkSettings(data, compiled, context);
  const leadsTo = endOf(end, path, tree.path, compiled, library, context);
  return leadsTo && { tree: tree.path, board: board?.path ?? null, leadsTo };
}

function fileOf(
  of: 'tree' | 'board',
  data: RawTable,
  from: string,
  library: Library,
  context: FactsContext,
): { readonly path: string; readonly text: string } | null {
  const named = textOf(data[of]);
  if (named === null) return null;
  const path = resolvePath(from, named);
  const text = path === null ? null : library.text(path);
  if (path !== null && text !== null) return { path, text };
  context.atValue([of], { code: 'case-file-missing', of, path: named });
  return null;
}

function checkSettings(data: RawTable, { settings }: CompiledTree, context: FactsContext): void {
  const names = settings.map(({ id }) => id);
  for (const name of Object.keys(tableOf(data.settings))) {
    if (names.includes(name)) continue;
    const near = nearest(name.slice(0, 60), names);
    context.atKey(['settings', name], { code: 'no-setting-named', name, near });
  }
}

/** The section that the last line names: of the tree itself, or of one it is handed over to. */
function endOf(
  end: WrittenEnd | null,
  from: string,
  treePath: string,
  tree: CompiledTree,
  library: Library,
  context: FactsContext,
): CaseEnd | null {
  if (end === null || end.kind === 'mended') return end;
  const [file = '', slug = ''] = end.url.split('#');
  const path = file === '' ? treePath : resolvePath(from, file);
  const section = decoded(slug);
  const text = path === null ? null : library.text(path);
  const other =
    path === treePath ? tree : path !== null && text !== null ? treeNamed(text, path, library) : null;
  if (other?.sections.some(({ id }) => id === section)) return { kind: 'section', tree: other.id, section };
  if (other !== null) {
    const near = nearest(
      section.slice(0, 60),
      other.sections.map(({ id }) => id),
    );
    context.at(end.span, { code: 'no-section-named', slug: section, near });
  } else {
    context.at(end.span, { code: 'case-end-elsewhere', url: end.url, trees: [treePath] });
  }
  return null;
}

function decoded(slug: string): string {
  try {
    return decodeURIComponent(slug);
  } catch {
    return slug;
  }
}
