import type { Measure, Reading } from '../model/reading.ts';

/** Of a reading that counts tries. */
export const triesBands = ['never', 'sometimes', 'always'] as const;

const bands: {
  readonly [Kind in Measure['kind']]: (measure: Extract<Measure, { kind: Kind }>) => readonly string[];
} = {
  quantity: ({ scale }) => scale.bands,
  options: ({ options }) => options.map(({ name }) => name),
  codes: (measure) => measure.bands,
  beeps: (measure) => measure.bands,
  tries: () => triesBands,
  each: (measure) => measure.bands,
};

/** All bands of a reading, in order. */
export function bandsOf({ measure }: Pick<Reading, 'measure'>): readonly string[] {
  return bands[measure.kind](measure as never);
}

/** The bands a healthy board shows; none where nothing is judged. */
export const normalBandsOf = ({ normal }: Reading): readonly string[] => (normal === 'any' ? [] : normal);

/** The bands that a board without a fault can show. */
export const healthyBandsOf = (reading: Reading): readonly string[] =>
  reading.normal === 'any' ? bandsOf(reading) : reading.normal;
