/** A suspect, or several that no check tells apart, with at least this share can be named. */
export const settled = 0.9;
