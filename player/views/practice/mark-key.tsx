import type { JSX } from 'preact';
import { markPath, type TimeMark } from '../../parts/time-mark.ts';

const words: Record<TimeMark['kind'], string> = {
  told: 'told something',
  'told nothing': 'told nothing',
  hint: 'hint',
  wrong: 'named, and not the cause',
  right: 'named and proven',
  'given up': 'given up',
};

/** What the shapes under the drawing mean: those that are in it. */
export function MarkKey({ marks }: { readonly marks: readonly TimeMark[] }): JSX.Element {
  const kinds = [...new Set(marks.map(({ kind }) => kind))];
  return (
    <ul class="mark-key narrowing-key">
      <li>
        <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
          <path class="narrowing-core" d="M0 4h16v8H0Z" />
        </svg>{' '}
        the true cause's share
      </li>
      {kinds.map((kind) => (
        <li key={kind}>
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
            <g class={`time-mark time-mark-${kind.replace(' ', '-')}`}>
              <path class="time-mark-shape" d={markPath(kind, 8, 8, 5.6)} />
            </g>
          </svg>{' '}
          {words[kind]}
        </li>
      ))}
      {marks.some(({ warned }) => warned) && (
        <li>
          <svg width="16" height="16" viewBox="0 0 16 16" aria-hidden="true">
            <g class="time-mark">
              <path class="time-mark-warned" d="M8 1l7 13H1Z" />
            </g>
          </svg>{' '}
          a warning passed over
        </li>
      )}
    </ul>
  );
}
