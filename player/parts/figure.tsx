import type { JSX } from 'preact';
import { asShown } from './as-shown.ts';

interface FigureProps {
  /** A value as the engine prints it: `25.2 MHz`, `> 200 kΩ`, `48 … 52 MHz`, `none`. */
  readonly text: string;
  readonly size: 'hero' | 'large' | 'row';
}

/** What many alike show, one after the other: it may be longer than a line. */
const isList = /[;,] /;

/** `short` of `2 long 6 short`: no unit is spelled in four small letters or more. */
const isWord = /^\p{Ll}{4,}/u;

/** `25.2 MHz` → `25.2` and `MHz`; a word without a number stays whole. */
export function splitFigure(text: string): { readonly number: string; readonly unit: string } {
  const match = /^(.*\d[^\s]*)\s+([^\d\s][^\d]*)$/u.exec(text);
  const [, number = text, unit = ''] = match ?? [];
  return isWord.test(unit) ? { number: text, unit: '' } : { number, unit };
}

/** A value with its unit in smaller letters, never broken over two lines. */
export function Figure({ text, size }: FigureProps): JSX.Element {
  const { number, unit } = splitFigure(asShown(text));
  if (isList.test(number)) return <strong class={`figure-list figure-list-${size}`}>{number}</strong>;
  return (
    <span class={`figure figure-${size}`}>
      {number}
      {unit !== '' && (
        <span class="figure-unit">
          {'\u00a0'}
          {unit}
        </span>
      )}
    </span>
  );
}
