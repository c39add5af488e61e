import type { LinkedTree } from '../link/linked-tree.ts';
import type { CompiledTree } from '../model/compiled-tree.ts';
import type { Section } from '../model/section.ts';
import { broughtHere } from './brought-here.ts';
import { digestTree } from './digest-tree.ts';
import { emitMachine } from './emit-machine.ts';

/** The tree as it is stored and walked, or null where it has no section to begin at. Meant for trees without errors.
 *  @param id the file's name without its ending */
export function emitCompiledTree(tree: LinkedTree, id: string): CompiledTree | null {
  const sections = tree.sections.map(({ section }) => section);
  if (!hasFirst(sections)) return null;
  const { title, symptom, boards, given, conditions, settings, readings, faults, odds } = tree.facts;
  const machine = emitMachine(sections);
  const walked = {
    given,
    conditions,
    settings,
    readings,
    faults: broughtHere(faults),
    ...(odds && { odds }),
    sections,
    machine,
  };
  const { hazards, blocks } = tree;
  return {
    format: 1,
    kind: 'compiled-tree',
    id,
    title,
    symptom,
    boards,
    digest: digestTree(walked),
    hazards,
    blocks,
    ...walked,
  };
}

const hasFirst = (sections: readonly Section[]): sections is readonly [Section, ...Section[]] =>
  sections.length > 0;
