/** A text of the author's, cut where it would bury the sentence. */
export const short = (text: string): string => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > 60 ? `${line.slice(0, 57)}…` : line;
};

const quoted = (names: readonly string[]): readonly string[] => names.map((name) => `"${short(name)}"`);

const joined = (parts: readonly string[], word: string): string =>
  parts.length < 2 ? parts.join('') : `${parts.slice(0, -1).join(', ')} ${word} ${parts.at(-1)}`;

/** `"a", "b" or "c"` */
export const anyOf = (names: readonly string[]): string => joined(quoted(names), 'or');

/** `"a", "b" and "c"` */
export const said = (names: readonly string[]): string => joined(quoted(names), 'and');

const mostNames = 24;

/** `"a", "b", "c"`, not without end. */
export const listed = (names: readonly string[]): string => {
  const shown = quoted(names.slice(0, mostNames)).join(', ');
  return names.length > mostNames ? `${shown}, …` : shown;
};
