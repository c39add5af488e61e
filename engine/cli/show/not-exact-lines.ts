import type { Analysis } from '../../analysis/analyse.ts';

/** What the analysis of a tree did not look at in full, a line for each section. */
export const notExactLines = (path: string, analysis: Analysis | null): readonly string[] =>
  (analysis?.notExact ?? []).map(({ section, why }) => `${path}: not exact at "${section}": ${why}`);
