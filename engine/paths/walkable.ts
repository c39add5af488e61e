import type { CompiledTree } from '../model/compiled-tree.ts';

/** What a walk depends on, compiled or just linked; calls are expanded. */
export type Walkable = Pick<
  CompiledTree,
  'given' | 'conditions' | 'settings' | 'readings' | 'faults' | 'sections'
>;
