import { resolvePath } from '../library/resolve-path.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { OpenFile } from './open-file.ts';

/** The files that the facts of a file use, as they are written. */
export function usesIn(front: FrontMatter): readonly string[] {
  const uses = (front.data as { readonly uses?: unknown } | null)?.uses;
  return Array.isArray(uses) ? uses.map((one) => (typeof one === 'string' ? one : '')) : [];
}

const resolved = (from: string, written: readonly string[]): readonly string[] =>
  written.flatMap((one) => resolvePath(from, one) ?? []);

/** The paths of the files that the one at `path` uses. */
export const usedPaths = (path: string, file: OpenFile | null): readonly string[] =>
  file?.front ? resolved(path, usesIn(file.front.value)) : [];

/** The paths of the procedures that the one at `path` follows. */
export const followedPaths = (path: string, file: OpenFile | null): readonly string[] =>
  file === null
    ? []
    : resolved(
        path,
        file.body.value.sections.flatMap(({ syntax }) =>
          syntax.kind === 'call' ? [syntax.procedure.file] : [],
        ),
      );
