import { namesLine } from './names-line.ts';

/** ``Read `a`, `b`.`` takes readings, in this order. */
export const readLine = namesLine('Read', { makes: 'check', completes: [] });
