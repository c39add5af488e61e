import type { Progress } from '../figures/figures-of.ts';

const length = 24;

/** How far the search for the best order has come, in one line of at most `width` columns. */
export function progressBar({ looked, budget, low, high }: Progress, width: number): string {
  const done = Math.min(length, Math.round((looked / budget) * length));
  const bar = `[${'='.repeat(done)}${' '.repeat(length - done)}]`;
  const line = `${bar} best order ${high.toFixed(1)} min, none below ${low.toFixed(1)}; Ctrl C stops`;
  return line.slice(0, width - 1);
}
