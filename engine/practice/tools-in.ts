import type { CompiledTree } from '../model/compiled-tree.ts';

/** Every tool that a reading of the tree asks for, in order of first mention. */
export const toolsIn = ({ readings }: Pick<CompiledTree, 'readings'>): readonly string[] => [
  ...new Set(readings.flatMap((reading) => reading.with)),
];
