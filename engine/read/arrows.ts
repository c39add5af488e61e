/** The arrows of the language. */
export const arrows = ['→', '->'] as const;

/** What is typed for them, longest first so that the whole of it is replaced. */
const lookalikes = [
  '&#8594;',
  '&rarr;',
  '-&gt;',
  '-->',
  '==>',
  '—>',
  '–>',
  '=>',
  '⇒',
  '⟶',
  '➔',
  '➜',
  '➡',
  '»',
  '>',
  '—',
  '–',
  ':',
];

export interface FoundArrow {
  readonly found: string;
  /** Offset in the text before the link. */
  readonly from: number;
  readonly right: boolean;
}

/** The arrow at the end of the text that stands before a link, or what is there in its place. */
export function arrowBefore(before: string): FoundArrow | null {
  const text = before.trimEnd();
  const found = lookalikes.slice(0, 6).find((each) => text.endsWith(each));
  if (found !== undefined) return { found, from: text.length - found.length, right: false };
  const arrow = arrows.find((each) => text.endsWith(each));
  if (arrow !== undefined) return { found: arrow, from: text.length - arrow.length, right: true };
  const other = lookalikes.find((each) => text.endsWith(each));
  return other === undefined ? null : { found: other, from: text.length - other.length, right: false };
}

const strict = /→|->/;
const toSection =
  /(?:→|->|[-=]{1,2}>|⇒|⟶|➔|➜|➡|—|–|&rarr;|-&gt;)\s{0,8}\[[^\]\n]{0,200}\]\(\s{0,8}<?(?:#|(?![a-z]+:)[^\s()<>]{1,200}\.md\b)/i;
const codeSpan = /`[^`\n]*`/g;

/** Whether a line has an arrow outside code. */
export const hasArrow = (line: string): boolean => strict.test(line.replace(codeSpan, ''));

/** Whether a line leads by an arrow, or something like one, to a section of this file or to another file. */
export const leadsToSection = (line: string): boolean => toSection.test(line);
