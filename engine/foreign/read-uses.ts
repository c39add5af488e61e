import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { idOfPath } from '../library/resolve-path.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import { cycleThrough } from './cycle-through.ts';
import { fileAt, missing } from './file-at.ts';
import type { Gift } from './join-foreign.ts';
import { usedPaths, usesIn } from './named-files.ts';
import type { Shelf } from './shelf.ts';

/** What the shared files give that the file at `path` uses. One with errors of its own gives what it can. */
export function readUses(front: FrontMatter, path: string, shelf: Shelf): Staged<readonly Gift[]> {
  const diagnostics: Diagnostic[] = [];
  const next = (at: string): readonly string[] => usedPaths(at, shelf.open(at));
  const value = usesIn(front).flatMap((written, index): readonly Gift[] => {
    const span = front.spanOf(['uses', index]);
    if (written === '') return [];
    const found = fileAt(path, written, 'shared', shelf);
    if ('problem' in found) {
      diagnostics.push(missing(found.problem, span));
      return [];
    }
    const cycle = cycleThrough(path, found.path, next);
    if (cycle !== null) {
      diagnostics.push({ code: 'files-in-circle', by: 'uses', names: cycle.map(idOfPath), span });
      return [];
    }
    const { value: facts, errors } = shelf.shared(found.path);
    if (errors > 0) diagnostics.push({ code: 'file-broken', path: written, errors, span });
    return [{ facts, from: written, span }];
  });
  return { value, diagnostics };
}
