import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { CodeRange } from '../../engine/model/reading.ts';

interface CodesFaceProps {
  readonly ranges: readonly CodeRange[];
  readonly normal: readonly string[] | 'any';
  /** What was typed, as a code; empty while nothing is understood. */
  readonly code: string;
  readonly onChoose: (code: string) => void;
}

const written = ({ from, to }: CodeRange) => (from === to ? from : `${from} to ${to}`);
const holds = ({ from, to }: CodeRange, code: string) => code !== '' && from <= code && code <= to;

/** The face of a code: a table of what the codes mean, the typed one in view. */
export function CodesFace({ ranges, normal, code, onChoose }: CodesFaceProps): JSX.Element {
  const read = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    read.current?.scrollIntoView?.({ block: 'nearest' });
  }, [code]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <section class="codes" tabIndex={0} aria-label="What the codes mean">
      <table>
        <thead class="unseen">
          <tr>
            <th scope="col">Code</th>
            <th scope="col">Band</th>
            <th scope="col">Meaning</th>
          </tr>
        </thead>
        <tbody>
          {ranges.map((range) => (
            <tr
              key={range.from}
              ref={holds(range, code) ? read : null}
              class={holds(range, code) ? 'code-read' : ''}
              aria-current={holds(range, code) ? 'true' : undefined}
            >
              <th scope="row">
                <button type="button" class="code" onClick={() => onChoose(range.from)}>
                  {written(range)}
                </button>
              </th>
              <td>
                {range.band}
                {normal !== 'any' && normal.includes(range.band) && <span class="option-mark"> normal</span>}
              </td>
              <td>{range.means}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
