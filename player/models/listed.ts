const list = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** `2, 5 and 7` */
export const listed = (items: readonly string[]): string => list.format(items);
