import { namesLine } from './names-line.ts';

/** ``Prove `a`, `b`.`` names what must be normal after the remedy. */
export const proveLine = namesLine('Prove', { makes: null, completes: 'Fault' });
