import type { Move } from './moves-of.ts';

/** What a sighting did, for a technician: `reference swing weak ×9`, the factor of the odds with two significant digits.
 *  @param name of the reading */
export function moveWords({ bands, logOdds }: Pick<Move, 'bands' | 'logOdds'>, name: string): string {
  return `${name} ${bands.join(' or ')} ×${factorWords(logOdds)}`;
}

/** `9`, `0.98`, `1200`; beyond what is worth telling, `over 10000` and `under 0.0001`. */
export function factorWords(logOdds: number): string {
  const factor = Math.exp(logOdds);
  if (factor > 10000) return 'over 10000';
  if (factor < 0.0001) return 'under 0.0001';
  return String(Number(factor.toPrecision(2)));
}
