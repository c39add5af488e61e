/** A bracket that is open, and where the value begins that is being written in it. */
export interface Flow {
  readonly bracket: number;
  readonly value: number;
}

export interface Open {
  /** Outermost first. */
  readonly flows: readonly Flow[];
  /** Where the quote stands that is not closed yet. */
  readonly quote: number | null;
}

/**
 * What is open at an offset of a YAML text.
 *
 * A quote or bracket opens something only where a value may begin: behind `: `, `- `, `,` or another bracket,
 * or at the beginning of a line.
 */
export function openAt(text: string, at: number): Open {
  const flows: Flow[] = [];
  let mayBegin = true;
  for (let index = 0; index < at; index += 1) {
    const character = text.charAt(index);
    const spaceFollows = /\s|^$/.test(text.charAt(index + 1));
    if (mayBegin && (character === '"' || character === "'")) {
      const end = closingQuote(text, index, at);
      if (end === null) return { flows, quote: index };
      index = end;
      mayBegin = false;
    } else if (mayBegin && (character === '{' || character === '[')) {
      flows.push({ bracket: index, value: index + 1 });
    } else if (flows.length > 0 && (character === '}' || character === ']')) {
      flows.pop();
      mayBegin = false;
    } else if (flows.length > 0 && (character === ',' || (character === ':' && spaceFollows))) {
      flows.push({ bracket: flows.pop()?.bracket ?? index, value: index + 1 });
      mayBegin = true;
    } else if (character === '#' && /\s/.test(text.charAt(index - 1))) {
      while (index + 1 < at && !/[\r\n]/.test(text.charAt(index + 1))) index += 1;
    } else if (character === '\n' || character === '\r') {
      mayBegin ||= flows.length === 0;
    } else if (character === ':') {
      mayBegin = spaceFollows;
    } else if (character === '-') {
      mayBegin &&= spaceFollows;
    } else if (character.trim() !== '') mayBegin = false;
  }
  return { flows, quote: null };
}

function closingQuote(text: string, from: number, end: number): number | null {
  const mark = text.charAt(from);
  for (let index = from + 1; index < end; index += 1) {
    if (text.charAt(index) === mark) return index;
    if (mark === '"' && text.charAt(index) === '\\') index += 1;
  }
  return null;
}
