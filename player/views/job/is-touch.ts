/** Whether a finger is what points here: a field that takes the focus would bring up the keyboard. */
export const isTouch = (): boolean => globalThis.matchMedia?.('(pointer: coarse)').matches ?? false;
