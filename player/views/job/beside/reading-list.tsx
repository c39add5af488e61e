import type { JSX } from 'preact';
import type { ReadingRow } from '../../../models/reading-rows.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { Figure } from '../../../parts/figure.tsx';

interface ReadingListProps {
  readonly rows: readonly ReadingRow[];
  readonly onRetake: (reading: string, of: number) => void;
}

/** Newest readings that stand open; older ones are folded, so that what is ruled out stays in sight. */
const shownAtOnce = 5;

/** Value, band, and what it should be; the newest first. */
export function ReadingList({ rows, onRetake }: ReadingListProps): JSX.Element {
  if (rows.length === 0) return <p class="hint">Nothing yet.</p>;
  const older = rows.slice(shownAtOnce);
  const draw = (some: readonly ReadingRow[]) => (
    <ul class="rows">
      {some.map((row) => (
        <Row key={row.reading} row={row} onRetake={onRetake} />
      ))}
    </ul>
  );
  return (
    <>
      {draw(rows.slice(0, shownAtOnce))}
      {older.length > 0 && (
        <details class="older">
          <summary>{older.length} older</summary>
          {draw(older)}
        </details>
      )}
    </>
  );
}

interface RowProps {
  readonly row: ReadingRow;
  readonly onRetake: ReadingListProps['onRetake'];
}

function Row({ row, onRetake }: RowProps): JSX.Element {
  return (
    <li class={`row${row.stale ? ' row-stale' : ''}`}>
      <span class="row-name">{row.is}</span>
      <span class="row-value">
        {row.value === null ? 'not read' : <Figure text={row.value} size="row" />}
        {row.value !== null && row.value !== row.bands.join(' or ') && (
          <span class={`row-band${bandClass(row)}`}>{row.bands.join(' or ')}</span>
        )}
      </span>
      <span class="row-more">{remarksOn(row).join(' · ')}</span>
      {row.of !== null && (
        <button
          type="button"
          class="row-again"
          onClick={() => row.of !== null && onRetake(row.reading, row.of)}
        >
          Retake<span class="unseen"> {row.is}</span>
        </button>
      )}
    </li>
  );
}

function bandClass({ judged, verdict }: ReadingRow): string {
  if (!judged || verdict === 'open') return '';
  return verdict === 'normal' ? ' word-normal' : ' word-off';
}

function remarksOn(row: ReadingRow): readonly string[] {
  const { judged, verdict, expected, from, doubt, looks } = row;
  const remarks: readonly (readonly [boolean, string])[] = [
    [judged && verdict === 'normal', 'as it should be'],
    [judged && verdict !== 'normal' && expected !== '', `should be ${asShown(expected)}`],
    [row.given, 'from the symptom'],
    [from === 'readings', 'computed'],
    [from === 'procedure', 'what the procedure found'],
    [doubt !== null, asShown(doubt ?? '')],
    [looks > 1 && from === null, `read ${looks} times`],
    [row.stale, 'the board was set otherwise'],
  ];
  return remarks.flatMap(([holds, words]) => (holds ? [words] : []));
}
