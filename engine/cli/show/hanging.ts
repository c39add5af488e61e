import { wrap } from '../../prose/plain-text.ts';

/** A text that may take more lines than one, two spaces in, and four where it goes on. */
export const hanging = (text: string, width: number): string =>
  `  ${wrap(text, width - 4).replaceAll('\n', '\n    ')}`;
