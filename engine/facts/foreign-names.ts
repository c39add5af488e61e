import type { ForeignFacts, ForeignNames } from '../model/foreign-facts.ts';

const idsOf = (items: readonly { readonly id: string }[]): ReadonlySet<string> =>
  new Set(items.map(({ id }) => id));

export const foreignNames = ({ settings, readings, faults, ones = [] }: ForeignFacts): ForeignNames => ({
  settings: idsOf(settings),
  readings: new Set([...idsOf(readings), ...ones]),
  faults: idsOf(faults),
});
