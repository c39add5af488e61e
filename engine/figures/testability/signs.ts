import { type Ground, groundOf } from '../order/ground.ts';
import type { Matrix } from '../order/matrix.ts';

/** What faults show in readings, and what a healthy board shows. */
export interface Signs {
  readonly matrix: Matrix;
  /** By column, the bands a healthy board shows; `any` where nothing is judged. */
  readonly normal: readonly (readonly number[] | 'any')[];
}

/** The same, as a search asks for it again and again. */
export interface SignsGround extends Ground {
  /** By column, the normal bands as bits; all where nothing is judged. */
  readonly normal: readonly number[];
}

export const signsGround = ({ matrix, normal }: Signs): SignsGround => ({
  ...groundOf(matrix),
  normal: normal.map((bands) => (bands === 'any' ? -1 : bands.reduce((bits, band) => bits | (1 << band), 0))),
});
