import type { Rule } from './rule.ts';

/** A fault that another one brings along must be found here as well, or nobody is told to look for it. */
export const broughtFaults: Rule = ({ facts, placeOf, open }) => {
  if (open.has('faults')) return [];
  const here = new Set(facts.faults.map(({ id }) => id));
  return facts.faults
    .filter(({ id }) => !facts.foreign.faults.has(id))
    .flatMap(({ id, brings }) =>
      Object.keys(brings ?? {})
        .filter((other) => !here.has(other))
        .map((brought) => ({
          code: 'brought-without-section' as const,
          fault: id,
          brought,
          span: placeOf('faults', id),
        })),
    );
};
