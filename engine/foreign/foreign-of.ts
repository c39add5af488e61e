import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import { joinForeign } from './join-foreign.ts';
import type { OpenFile } from './open-file.ts';
import { readUses } from './read-uses.ts';
import type { Shelf } from './shelf.ts';

/** What the files declare that this one uses, for files that follow no procedure. */
export function foreignOf({ front }: OpenFile, path: string, shelf: Shelf): Staged<ForeignFacts> {
  if (front === null) return { value: noForeignFacts, diagnostics: [] };
  const uses = readUses(front.value, path, shelf);
  const joined = joinForeign(uses.value);
  const diagnostics: readonly Diagnostic[] = [...uses.diagnostics, ...joined.diagnostics];
  return { value: joined.value, diagnostics };
}
