import type { ResolvedScale } from '../model/resolved-scale.ts';
import { printQuantity } from '../quantity/index.ts';
import { twinName } from './twin-of.ts';

type Limits = Pick<ResolvedScale, 'bands' | 'limits'> & Partial<Pick<ResolvedScale, 'missing'>>;

/** The values that lie in the named bands: `39.6 MHz .. 40.4 MHz`, `at least 4 V`, `any value`. */
export function rangesText(scale: Limits, named: readonly string[]): string {
  return runs(scale.bands, named)
    .map((run) => rangeText(scale, run))
    .join(' or ');
}

const called = (name: string): string => (name === twinName ? 'the known-good board' : name);

interface Run {
  readonly first: number;
  readonly last: number;
}

/** Neighbouring normal bands read as one range. */
function runs(bands: readonly string[], normal: readonly string[]): readonly Run[] {
  const found: Run[] = [];
  for (const [at, band] of bands.entries()) {
    if (!normal.includes(band)) continue;
    const run = found.at(-1);
    if (run?.last === at - 1) found[found.length - 1] = { first: run.first, last: at };
    else found.push({ first: at, last: at });
  }
  return found;
}

function rangeText({ bands, limits, missing = [] }: Limits, { first, last }: Run): string {
  const low = first === 0 ? undefined : limits[first - 1];
  const high = last === bands.length - 1 ? undefined : limits[last];
  if (low === null || high === null) return `depends on ${missing.map(called).join(', ')}`;
  if (low && high) return `${printQuantity(low)} .. ${printQuantity(high)}`;
  if (low) return `at least ${printQuantity(low)}`;
  return high ? `at most ${printQuantity(high)}` : 'any value';
}
