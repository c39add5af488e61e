import type { JSX } from 'preact';
import type { RecordReading } from '../../../engine/model/record.ts';
import { asShown } from '../../parts/as-shown.ts';
import { Figure } from '../../parts/figure.tsx';

interface RecordReadingsProps {
  readonly readings: readonly RecordReading[];
  /** With entry number, time and place, as the bench wants it. */
  readonly whole?: boolean;
}

/** Readings in a table: what, value, band, what it should be. */
export function RecordReadings({ readings, whole = false }: RecordReadingsProps): JSX.Element {
  const label = whole ? 'Table of every reading' : 'Table of the proof';
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keyboard
    <section class="record-table" tabIndex={0} aria-label={label}>
      <table>
        <thead>
          <tr>
            {whole && <th scope="col">#</th>}
            {whole && <th scope="col">When</th>}
            <th scope="col">Reading</th>
            <th scope="col">Value</th>
            <th scope="col">Band</th>
            <th scope="col">Should be</th>
            <th scope="col">Verdict</th>
          </tr>
        </thead>
        <tbody>
          {readings.map((row) => (
            <tr key={row.entry} class={row.aside === null ? '' : 'row-stale'}>
              {whole && <td>{row.entry}</td>}
              {whole && <td>{row.at.slice(5, 16).replace('T', ' ')}</td>}
              <td class="record-reading">
                {row.is}
                {whole && row.section !== '' && <small>{row.section}</small>}
              </td>
              <td>
                <Figure text={row.value} size="row" />
                {row.doubt !== null && ` ${asShown(row.doubt.plusMinus)}`}
                {row.mark !== null && `, ${row.mark}`}
              </td>
              <td>{row.bands.join(' or ')}</td>
              <td>{asShown(row.expected)}</td>
              <td>{row.aside ?? verdictText(row)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

/** `normal (conditional pass)` where an instrument's accuracy is known. */
const verdictText = ({ verdict, doubt }: RecordReading): string =>
  doubt?.verdict == null ? verdict : `${verdict} (${doubt.verdict})`;
