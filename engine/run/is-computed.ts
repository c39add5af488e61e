import type { Reading } from '../model/reading.ts';

/** Whether a reading follows from others, or from how a call ended: nobody is asked for it. */
export const isComputed = ({ from, call }: Reading): boolean => from !== null || call;
