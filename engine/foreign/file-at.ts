import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { FileFacts, NamedKind } from '../diagnostics/file-facts.ts';
import { relativePath } from '../library/relative-path.ts';
import { resolvePath } from '../library/resolve-path.ts';
import type { Span } from '../model/span.ts';
import { nearest } from '../names/nearest.ts';
import type { OpenFile } from './open-file.ts';
import type { Shelf } from './shelf.ts';

/** A file that another names. */
export type FileAt = { readonly path: string; readonly file: OpenFile } | { readonly problem: FileFacts };

/** The file that is written as `written` in the one at `from`, if it is there and of the kind that is wanted. */
export function fileAt(from: string, written: string, wanted: NamedKind, shelf: Shelf): FileAt {
  const path = resolvePath(from, written);
  const file = path === null ? null : shelf.open(path);
  if (path === null || file === null) {
    const { alone } = shelf;
    return {
      problem: { code: 'no-file', path: written, wanted, near: nearPaths(from, written, shelf), alone },
    };
  }
  const { kind } = file;
  if (kind !== null && kind !== wanted)
    return { problem: { code: 'other-file-kind', path: written, wanted, kind } };
  return { path, file };
}

/** A file that cannot be used, told where it is named. */
export function missing(problem: FileFacts, span: Span): Diagnostic {
  const [near, ...others] = problem.code === 'no-file' ? problem.near : [];
  if (near === undefined || others.length > 0) return { ...problem, span };
  return { ...problem, span, fix: { title: `Write "${near}"`, edits: [{ ...span, insert: near }] } };
}

/** Names of files that could have been meant: spelt nearly so, or of the same name in another folder. */
function nearPaths(from: string, written: string, shelf: Shelf): readonly string[] {
  if (written.length > 100) return [];
  const name = written.slice(written.lastIndexOf('/') + 1);
  const ways = shelf.paths().map((path) => relativePath(from, path));
  const elsewhere = ways.filter((way) => way.slice(way.lastIndexOf('/') + 1) === name);
  return [...new Set([...elsewhere, ...nearest(written, ways)])].filter((way) => way !== written).slice(0, 3);
}
