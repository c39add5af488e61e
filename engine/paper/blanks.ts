import { type Child, type Element, element } from '../markup/index.ts';

/** A box to tick. */
export const tick = (): Element => element('span', { class: 'tick', 'aria-hidden': 'true' });

/** A line to write on.
 *  @param size how long: `short` for a number, `long` to the end of the line */
export const blank = (size: 'short' | 'medium' | 'long'): Element =>
  element('span', { class: `blank ${size}`, 'aria-hidden': 'true' });

/** Boxes with what they stand for, side by side. */
export const ticks = (names: readonly Child[]): Element =>
  element(
    'span',
    { class: 'ticks' },
    names.map((name) => [element('span', { class: 'choice' }, tick(), ' ', name), ' ']),
  );
