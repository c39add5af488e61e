import type { Observation, Understood } from '../model/observation.ts';
import { printQuantity } from '../quantity/index.ts';

type Texts = {
  readonly [Kind in Understood['kind']]: (understood: Extract<Understood, { kind: Kind }>) => string;
};

const texts: Texts = {
  quantity: ({ quantity }) => printQuantity(quantity),
  interval: ({ from, to, closed, unit }) => {
    const print = (value: string): string => printQuantity({ value, unit });
    if (from !== null && to !== null) return `${print(from)} .. ${print(to)}`;
    if (from !== null) return `${closed ? '≥' : '>'} ${print(from)}`;
    return to === null ? 'any value' : `${closed ? '≤' : '<'} ${print(to)}`;
  },
  option: ({ option }) => option,
  code: ({ code }) => code,
  overload: () => 'OL',
};

/** An observation as it is shown back: `25.2 MHz`, `48 MHz .. 52 MHz`, `steady`. Its mark is not part of it. */
export function observationText({ understood }: Pick<Observation, 'understood'>): string {
  return texts[understood.kind](understood as never);
}
