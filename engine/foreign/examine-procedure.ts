import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { readProcedureFacts, standIns } from '../facts/index.ts';
import { idOfPath } from '../library/resolve-path.ts';
import { linkTree } from '../link/link-tree.ts';
import type { LinkedTree } from '../link/linked-tree.ts';
import type { Procedure } from '../link/procedures/procedure.ts';
import type { FrontMatter } from '../model/front-matter.ts';
import type { ProcedureFacts } from '../model/procedure-facts.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { checkRules } from '../rules/index.ts';
import { inOrder, isError } from './in-order.ts';
import { joinForeign } from './join-foreign.ts';
import type { OpenFile } from './open-file.ts';
import { type FoundBeside, readBeside } from './read-beside.ts';
import type { Shelf } from './shelf.ts';

/** A procedure linked for itself, its parameters standing for what a caller gives; and everything that is wrong with it.
 *  Null where anything is an error. */
export function examineProcedure(file: OpenFile, path: string, shelf: Shelf): Staged<Procedure | null> {
  const { source, front, body } = file;
  if (front === null) return { value: null, diagnostics: inOrder(source.diagnostics) };
  const found = readBeside(file, path, 'procedure', shelf);
  const read = readProcedureFacts(front.value, found.value.foreign);
  const beside = asGiven(found.value, read.value);
  const placeOf = (table: string, id: string) => front.value.spanOf([table, id], 'key');
  const linked = linkTree(asTree(read.value), placeOf, body.value, beside);
  const own = ownFindings(read.value, linked.value, beside, front.value, spokenOf(file));
  const stages = [
    source,
    front,
    found,
    read,
    body,
    linked,
    { diagnostics: [...checkRules(linked.value), ...own] },
  ];
  const diagnostics = inOrder(stages.flatMap((stage) => stage.diagnostics));
  return {
    value: diagnostics.some(isError) ? null : procedureOf(path, file, read.value, found.value),
    diagnostics,
  };
}

/** Parameters are the caller's: whether the procedure rests on them is asked here, not by the rules. */
const asGiven = (beside: FoundBeside, { takes, ends }: ProcedureFacts): FoundBeside => {
  const { readings, settings } = standIns(takes);
  const { foreign } = beside;
  return {
    ...beside,
    ends,
    foreign: {
      ...foreign,
      readings: [...foreign.readings, ...readings],
      settings: [...foreign.settings, ...settings],
    },
  };
};

/** A procedure as a tree without a symptom and without faults. */
function asTree({ takes, ends: _ends, ...facts }: ProcedureFacts): TreeFacts {
  const { readings, settings } = standIns(takes);
  const given = readings.map((reading) => {
    const { measure } = reading;
    const bands = measure.kind === 'options' ? measure.options.map(({ name }) => name) : [];
    const scaled = measure.kind === 'quantity' ? measure.scale.bands : bands;
    return scaled.includes('good') ? { ...reading, normal: ['good'] } : reading;
  });
  return {
    ...facts,
    symptom: '',
    boards: [],
    given: [],
    faults: [],
    tools: null,
    readings: [...facts.readings, ...given],
    settings: [...facts.settings, ...settings],
  };
}

/** The code spans of the prose: one that names a parameter shows what the caller gave. */
const spokenOf = ({ body }: OpenFile): ReadonlySet<string> =>
  new Set(
    [body.value.head, ...body.value.sections].flatMap(({ syntax }) =>
      syntax.mentions.codes.map(({ name }) => name),
    ),
  );

function ownFindings(
  { takes, ends }: ProcedureFacts,
  { facts, sections, open }: LinkedTree,
  { followed }: FoundBeside,
  front: FrontMatter,
  spoken: ReadonlySet<string>,
): readonly Diagnostic[] {
  const ended = new Set(sections.flatMap(({ end }) => end ?? []));
  const isMeant = [...ended].some((end) => !ends.some(({ id }) => id === end));
  const kept = new Set([...facts.readings, ...facts.settings].map(({ id }) => id));
  const texts = [...followed.values()].flatMap(({ given }) => [...given.values()]).join(' ');
  const passed = new Set(texts.match(/[\p{L}_][\p{L}\p{N}_]*/gu));
  const unused = takes.filter(
    ({ id }) => !open.has('ways') && !kept.has(id) && !passed.has(id) && !spoken.has(id),
  );
  return [
    ...ends
      .filter(({ id }) => !ended.has(id) && !isMeant && !open.has('ways'))
      .map(({ id }) => ({
        code: 'end-without-section' as const,
        end: id,
        span: front.spanOf(['ends', id], 'key'),
      })),
    ...unused.map(({ id }) => ({
      code: 'unused-parameter' as const,
      parameter: id,
      span: front.spanOf(['takes', id], 'key'),
    })),
  ];
}

function procedureOf(
  path: string,
  { body }: OpenFile,
  facts: ProcedureFacts,
  { uses, followed }: FoundBeside,
): Procedure {
  const calls = [...followed.values()];
  const span = { from: 0, to: 0 };
  const ofCalls = calls.map(({ procedure }) => ({ facts: procedure.common, from: procedure.path, span }));
  const common = joinForeign([...uses, ...ofCalls]).value;
  return {
    id: idOfPath(path),
    path,
    facts,
    locals: facts.readings.filter(({ id }) => !facts.foreign.readings.has(id)),
    common: { ...common, conditions: facts.conditions, settings: facts.settings },
    body: body.value,
    calls: followed,
    size: calls.reduce(
      (sum, { procedure }) => sum + procedure.size,
      body.value.sections.filter(({ syntax }) => syntax.kind !== 'end').length,
    ),
  };
}
