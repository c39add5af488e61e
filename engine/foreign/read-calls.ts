import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { idOfPath } from '../library/resolve-path.ts';
import { placeIn } from '../link/place-in.ts';
import type { Call } from '../link/procedures/procedure.ts';
import type { BodySyntax } from '../read/body-syntax.ts';
import { cycleThrough } from './cycle-through.ts';
import { fileAt, missing } from './file-at.ts';
import { followedPaths } from './named-files.ts';
import type { Shelf } from './shelf.ts';

/** The procedures that the file at `path` follows, by calling section. Those that cannot be followed are reported and
 *  left out. */
export function readCalls(
  { sections }: BodySyntax,
  path: string,
  shelf: Shelf,
): Staged<ReadonlyMap<string, Call>> {
  const diagnostics: Diagnostic[] = [];
  const calls = new Map<string, Call>();
  const next = (at: string): readonly string[] => followedPaths(at, shelf.open(at));
  for (const { syntax, from } of sections) {
    if (syntax.kind !== 'call') continue;
    const written = syntax.procedure.file;
    const span = placeIn(from, syntax.procedure.span);
    const found = fileAt(path, written, 'procedure', shelf);
    if ('problem' in found) {
      diagnostics.push(missing(found.problem, span));
      continue;
    }
    const cycle = cycleThrough(path, found.path, next);
    if (cycle !== null) {
      diagnostics.push({ code: 'files-in-circle', by: 'Follow', names: cycle.map(idOfPath), span });
      continue;
    }
    const { value: procedure, errors } = shelf.procedure(found.path);
    if (procedure === null) {
      diagnostics.push({ code: 'file-broken', path: written, errors, span });
      continue;
    }
    const given = new Map(syntax.given.map(({ name, value }) => [name.name, value.name]));
    const leadSpan = placeIn(from, syntax.leadSpan);
    if (!calls.has(syntax.id)) calls.set(syntax.id, { section: syntax.id, procedure, given, span: leadSpan });
  }
  return { value: calls, diagnostics };
}
