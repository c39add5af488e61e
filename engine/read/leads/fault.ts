import { namesLine } from './_names-line.ts';

/** ``Fault `x`.`` says that the root cause is found. */
export const fault = namesLine('Fault', { makes: 'fault', completes: null });
