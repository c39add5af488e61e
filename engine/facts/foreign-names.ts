import type { ForeignFacts, ForeignNames } from '../model/foreign-facts.ts';

const idsOf = (items: readonly { readonly id: string }[]): ReadonlySet<string> =>
  new Set(items.map(({ id }) => id));

export const foreignNames = ({ settings, readings, faults }: ForeignFacts): ForeignNames => ({
  settings: idsOf(settings),
  readings: idsOf(readings),
  faults: idsOf(faults),
});
