/** A line that cannot move the cursor about: control characters become dots, tabs stay. */
export const printable = (line: string): string => line.replace(/(?!\t)\p{Cc}/gu, '\u00B7');
