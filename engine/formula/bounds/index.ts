export { anything, type Bounds, type End, exactly, noValue } from './bounds.ts';
export { boundsOf } from './bounds-of.ts';
