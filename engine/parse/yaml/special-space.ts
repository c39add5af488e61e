/** Characters that look like a space and are none to YAML. */
const names: Readonly<Record<string, string>> = {
  '\u00A0': 'a no-break space',
  '\u1680': 'an ogham space',
  '\u2000': 'an en quad',
  '\u2001': 'an em quad',
  '\u2002': 'an en space',
  '\u2003': 'an em space',
  '\u2004': 'a third of an em space',
  '\u2005': 'a quarter of an em space',
  '\u2006': 'a sixth of an em space',
  '\u2007': 'a figure space',
  '\u2008': 'a punctuation space',
  '\u2009': 'a thin space',
  '\u200A': 'a hair space',
  '\u200B': 'a space of no width',
  '\u202F': 'a narrow no-break space',
  '\u205F': 'a mathematical space',
  '\u3000': 'an ideographic space',
  '\uFEFF': 'a byte order mark',
};

/** For use between the brackets of a regular expression. */
export const specialSpaces = Object.keys(names).join('');

export const nameOfSpace = (character: string): string => names[character] ?? 'a special space';
