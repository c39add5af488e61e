import normalCdf from '@stdlib/stats-base-dists-normal-cdf';
import type { Tolerance } from './conformance-probability.ts';

interface Process {
  /** How the things that are measured are spread, normally. */
  readonly mean: number;
  readonly deviation: number;
  /** The standard uncertainty of one measurement. */
  readonly uncertainty: number;
}

interface GlobalRisks {
  /** The share of all that is bad and accepted. */
  readonly consumer: number;
  /** The share of all that is good and rejected. */
  readonly producer: number;
}

/** What an acceptance interval lets through, and what it throws away, over all that is measured.
 *  Source: JCGM 106:2012, clause 9. */
export function globalRisks(process: Process, tolerance: Tolerance, acceptance: Tolerance): GlobalRisks {
  const { mean, deviation, uncertainty } = process;
  const end = 10 * deviation;
  const low = tolerance.low ?? mean - end;
  const high = tolerance.high ?? mean + end;
  const density = (x: number): number =>
    Math.exp(-(((x - mean) / deviation) ** 2) / 2) / (deviation * Math.sqrt(2 * Math.PI));
  const accepted = (x: number): number =>
    (acceptance.high === null ? 1 : normalCdf(acceptance.high, x, uncertainty)) -
    (acceptance.low === null ? 0 : normalCdf(acceptance.low, x, uncertainty));
  const bad = (x: number): number => density(x) * accepted(x);
  return {
    consumer: integral(bad, Math.min(mean - end, low), low) + integral(bad, high, Math.max(mean + end, high)),
    producer: integral((x) => density(x) * (1 - accepted(x)), low, high),
  };
}

/** Simpson's rule; the functions above are smooth between the limits. */
function integral(of: (x: number) => number, from: number, to: number): number {
  const steps = 2000;
  const width = (to - from) / steps;
  let sum = of(from) + of(to);
  for (let at = 1; at < steps; at += 1) sum += of(from + at * width) * (at % 2 === 1 ? 4 : 2);
  return (sum * width) / 3;
}
