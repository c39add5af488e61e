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

/** The sections that a section leads to; for a check one for each outcome, in their order. */
export const targetsOf = (section: Section): readonly string[] => targets[section.kind](section as never);
