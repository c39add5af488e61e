import { nameOfSpace, specialSpaces } from './special-space.ts';
import type { Remedy } from './trouble.ts';

const indented = new RegExp(`^([ ]*)([${specialSpaces}][ ${specialSpaces}]*)(?=[\\w"'-]+[^:\\n]*:|- )`, 'gm');

/** Lines that are indented with spaces YAML does not know. */
export const specialIndents = (text: string): readonly Remedy[] =>
  [...text.matchAll(indented)].map(({ index, 1: plain = '', 2: special = '' }) => {
    const span = { from: index + plain.length, to: index + plain.length + special.length };
    const edits = [{ ...span, insert: ' '.repeat(special.length) }];
    const name = nameOfSpace(special.replaceAll(' ', '').charAt(0));
    return {
      facts: { code: 'special-space', name },
      span,
      fix: { title: 'Write plain spaces', edits },
      repair: edits,
    };
  });
