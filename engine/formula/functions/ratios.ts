import { type Dimension, isPlain, plainNumber } from '../dimension.ts';
import type { Misfit } from './function-row.ts';

/** The rule of functions over ratios: plain numbers, and so is the result. */
export function ratios(args: readonly Dimension[]): Dimension | Misfit {
  const notPlain = args.findIndex((arg) => !isPlain(arg));
  return notPlain >= 0 ? { notPlain } : plainNumber;
}
