import { namesLine } from './names-line.ts';

/** ``Fault `x`.`` says that the root cause is found. */
export const faultLine = namesLine('Fault', { makes: 'fault', completes: [] });
