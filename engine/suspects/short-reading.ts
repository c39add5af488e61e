/** The name of a reading as it is said among others: `Clock at the CPU socket, far end of the resistor` without what follows
 *  the comma. */
export const shortReading = (is: string): string => is.split(/[,;(]/)[0]?.trim() || is;
