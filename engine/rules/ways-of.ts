import type { LinkedTree } from '../link/linked-tree.ts';
import type { Section } from '../model/section.ts';
import { targetsOf } from '../paths/targets-of.ts';

/** Which section leads where, by id. */
export const waysAmong = (sections: readonly Section[]): ReadonlyMap<string, readonly string[]> =>
  new Map(sections.map((section) => [section.id, targetsOf(section)]));

export const waysOf = ({ sections }: LinkedTree): ReadonlyMap<string, readonly string[]> =>
  waysAmong(sections.map(({ section }) => section));
