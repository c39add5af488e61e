import type { Section } from '../model/section.ts';

type Targets = {
  readonly [Kind in Section['kind']]: (section: Extract<Section, { kind: Kind }>) => readonly string[];
};

const targets: Targets = {
  check: ({ outcomes }) => outcomes.map(({ target }) => target),
  task: ({ target }) => [target],
  call: ({ first }) => [first],
  fault: () => [],
  stop: () => [],
  'hand-over': () => [],
};

/** The sections that a section leads to, each once; a call leads into its procedure, whose own ways lead out of it. */
export const targetsOf = (section: Section): readonly string[] => [
  ...new Set(targets[section.kind](section as never)),
];
