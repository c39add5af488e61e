/** A procedure's own sections find where something sits as well as what it is, and serve other trees: no advice is given on them. */
export const isInProcedure = (section: string): boolean => section.includes('.');
