import type { CompiledTree } from '../model/compiled-tree.ts';
import type { CheckSection } from '../model/section.ts';

export type ReadIn = ReadonlyMap<string, readonly CheckSection[]>;

const known = new WeakMap<CompiledTree, ReadIn>();

/** The checks that ask for each reading, in the order of the tree. What none asks for, but the first reading of a check waits for, is given there. They follow from the tree alone and are asked for at every
 *  step, so they are kept. */
export function readIn(tree: CompiledTree): ReadIn {
  const before = known.get(tree);
  if (before !== undefined) return before;
  const checks = new Map<string, CheckSection[]>();
  for (const section of tree.sections) {
    if (section.kind !== 'check') continue;
    for (const id of section.readings) {
      const others = checks.get(id);
      if (others === undefined) checks.set(id, [section]);
      else others.push(section);
    }
  }
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  for (const section of tree.sections) {
    if (section.kind !== 'check') continue;
    for (const { reading } of readings.get(section.readings[0] ?? '')?.onlyIf ?? []) {
      if (!checks.has(reading)) checks.set(reading, [section]);
    }
  }
  known.set(tree, checks);
  return checks;
}
