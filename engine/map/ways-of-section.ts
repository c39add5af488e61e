import type { Section } from '../model/section.ts';

/** A way out of a section. */
export interface MapWay {
  /** Section id. */
  readonly target: string;
  /** The conditions under which it is taken, as the author wrote them; none where it is the only way. */
  readonly conditions: readonly string[];
}

type Ways = {
  readonly [Kind in Section['kind']]: (
    section: Extract<Section, { readonly kind: Kind }>,
  ) => readonly MapWay[];
};

const ways: Ways = {
  check: ({ outcomes }) =>
    outcomes.map(({ target, written }) => ({ target, conditions: [written.replaceAll('`', '')] })),
  task: ({ target }) => [{ target, conditions: [] }],
  call: ({ ends }) => ends.map(({ target, end }) => ({ target, conditions: [end] })),
  fault: () => [],
  stop: () => [],
  'hand-over': () => [],
};

/** The ways out of a section, those with the same end taken together, in the order of the file. */
export function waysOfSection(section: Section): readonly MapWay[] {
  const together = new Map<string, readonly string[]>();
  for (const { target, conditions } of ways[section.kind](section as never))
    together.set(target, [...(together.get(target) ?? []), ...conditions]);
  return [...together].map(([target, conditions]) => ({ target, conditions }));
}
