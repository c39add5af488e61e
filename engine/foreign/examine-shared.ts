import type { Staged } from '../diagnostics/staged.ts';
import { readSharedFacts } from '../facts/index.ts';
import { linkTree } from '../link/link-tree.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import type { BodySyntax } from '../read/body-syntax.ts';
import { inOrder } from './in-order.ts';
import { joinForeign } from './join-foreign.ts';
import type { OpenFile } from './open-file.ts';
import { readBeside } from './read-beside.ts';
import type { Shelf } from './shelf.ts';

/** What a file of shared readings gives to those that use it, and everything that is wrong with it. Its body is prose. */
export function examineShared(file: OpenFile, path: string, shelf: Shelf): Staged<ForeignFacts> {
  const { source, front } = file;
  if (front === null) return { value: noForeignFacts, diagnostics: inOrder(source.diagnostics) };
  const body = proseOnly(file.body);
  const beside = readBeside({ ...file, body }, path, 'shared', shelf);
  const foreign = joinForeign(beside.value.uses).value;
  const facts = readSharedFacts(front.value, foreign);
  const { title } = front.value.data as { readonly title?: unknown };
  const named = {
    title: typeof title === 'string' ? title : '',
    symptom: '',
    boards: [],
    minutes: 0,
    given: [],
    ...facts.value,
    foreign: { settings: new Set<string>(), readings: new Set<string>(), faults: new Set<string>() },
    tools: null,
  };
  const linked = linkTree(
    named,
    (table, id) => front.value.spanOf([table, id], 'key'),
    body.value,
    beside.value,
  );
  const stages = [source, front, beside, facts, body, linked];
  return { value: facts.value, diagnostics: inOrder(stages.flatMap((stage) => stage.diagnostics)) };
}

/** A section of prose needs no lead line here. */
const proseOnly = ({ value, diagnostics }: Staged<BodySyntax>): Staged<BodySyntax> => ({
  value,
  diagnostics: diagnostics.filter(({ code }) => code !== 'section-without-lead-line'),
});
