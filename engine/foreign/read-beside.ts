import type { FileKind } from '../diagnostics/body-facts.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { idOfPath } from '../library/resolve-path.ts';
import type { Beside, OtherTree } from '../link/beside.ts';
import { type Instance, instancesOf } from '../link/procedures/instance.ts';
import { instanceReadings } from '../link/procedures/instance-readings.ts';
import type { Call, Procedure } from '../link/procedures/procedure.ts';
import { noForeignFacts } from '../model/foreign-facts.ts';
import { fileAt } from './file-at.ts';
import { type Gift, joinForeign } from './join-foreign.ts';
import { onesGiven } from './ones-given.ts';
import type { OpenFile } from './open-file.ts';
import { readCalls } from './read-calls.ts';
import { readUses } from './read-uses.ts';
import type { Shelf } from './shelf.ts';

/** The most sections that a tree may have with the procedures that it follows. */
const mostStates = 5000;

/** What a file has from others. */
export interface FoundBeside extends Beside {
  /** What the files give that it uses. */
  readonly uses: readonly Gift[];
  readonly followed: ReadonlyMap<string, Call>;
}

/** Everything that linking must know of the files beside the one at `path`. */
export function readBeside(
  { front, body }: OpenFile,
  path: string,
  kind: FileKind,
  shelf: Shelf,
): Staged<FoundBeside> {
  const uses = front === null ? { value: [], diagnostics: [] } : readUses(front.value, path, shelf);
  const follows = readCalls(body.value, path, shelf);
  const tooMany = overgrown(body.value.sections.length, follows.value);
  const followed: ReadonlyMap<string, Call> = tooMany === null ? follows.value : new Map();
  const calls = instancesOf(followed);
  const foreign = joinForeign([...uses.value, ...[...calls.values()].map(giftOf)]);
  return {
    value: {
      kind,
      path,
      ends: [],
      foreign: { ...foreign.value, ones: onesGiven(calls) },
      calls,
      uses: uses.value,
      followed,
      files: shelf,
      otherTree: (from, file) => otherTree(from, file, shelf),
    },
    diagnostics: [
      ...uses.diagnostics,
      ...follows.diagnostics,
      ...foreign.diagnostics,
      ...(tooMany === null ? [] : [tooMany]),
    ],
  };
}

/** What a call brings: its readings, and what its procedure and those that it follows have in common with everything. */
function giftOf(instance: Instance): Gift {
  const { procedure, call } = instance;
  const readings = [...procedure.common.readings, ...instanceReadings(instance)];
  return {
    facts: { ...procedure.common, readings, faults: noForeignFacts.faults },
    from: procedure.path,
    span: call.span,
  };
}

function overgrown(own: number, calls: ReadonlyMap<string, Call>): Diagnostic | null {
  const called = [...calls.values()];
  const count = called.reduce((sum, { procedure }) => sum + procedure.size, own);
  const largest = called.toSorted((a, b) => b.procedure.size - a.procedure.size)[0];
  if (count <= mostStates || largest === undefined) return null;
  const chain = [largest.section, ...chainIn(largest.procedure)];
  return { code: 'too-many-states', count, limit: mostStates, chain, span: largest.span };
}

/** The procedures by which the most sections come, outermost first. */
function chainIn(procedure: Procedure): readonly string[] {
  const largest = [...procedure.calls.values()].toSorted((a, b) => b.procedure.size - a.procedure.size)[0];
  return [procedure.facts.title, ...(largest ? chainIn(largest.procedure) : [])];
}

function otherTree(from: string, written: string, shelf: Shelf): OtherTree {
  const found = fileAt(from, written, 'tree', shelf);
  if ('problem' in found) return found;
  const { path, file } = found;
  const data = file.front?.value.data as { readonly title?: unknown } | null | undefined;
  const id = idOfPath(path);
  const title = typeof data?.title === 'string' ? data.title : id;
  return {
    id,
    title,
    /** Reading a whole tree for this takes long, and most links name none. */
    get sections() {
      return new Set(file.body.value.sections.map(({ syntax }) => syntax.id));
    },
  };
}
