import type { LinkedTree } from '../link/linked-tree.ts';
import type { Section } from '../model/section.ts';

const targets: {
  readonly [Kind in Section['kind']]: (section: Extract<Section, { kind: Kind }>) => readonly string[];
} = {
  check: ({ outcomes }) => outcomes.map(({ target }) => target),
  task: ({ target }) => [target],
  call: ({ first }) => [first],
  fault: () => [],
  stop: () => [],
  'hand-over': () => [],
};

/** The sections that a section leads to. */
const targetsOf = (section: Section): readonly string[] => targets[section.kind](section as never);

/** Which section leads where, by id. */
export const waysAmong = (sections: readonly Section[]): ReadonlyMap<string, readonly string[]> =>
  new Map(sections.map((section) => [section.id, targetsOf(section)]));

export const waysOf = ({ sections }: LinkedTree): ReadonlyMap<string, readonly string[]> =>
  waysAmong(sections.map(({ section }) => section));
