import type { JSX } from 'preact';
import { suspectLines } from '../../../engine/job/index.ts';
import type { JobRecord } from '../../../engine/model/record.ts';
import { Part } from './part.tsx';
import { RecordReadings } from './record-readings.tsx';

/** What only the bench needs: every reading, what was ruled out and by what, the notes. */
export function BenchCopy({ record }: { readonly record: JobRecord }): JSX.Element {
  return (
    <>
      <section class="every-reading">
        <h2>Every reading</h2>
        <RecordReadings readings={record.readings} whole />
      </section>
      <Part title="What the readings say together" lines={record.findings.map(({ text }) => text)} />
      <Part title="At the bench" lines={benchLines(record)} />
      <Part title="Done all the same" lines={record.overrides.map(({ what, why }) => `${what}: ${why}`)} />
      <Part
        title="What else happened"
        lines={record.events.map(({ at, text }) => `${minuteOf(at)}: ${text}`)}
      />
      {record.outcome === 'open' && <Part title="What it may be" lines={suspectLines(record)} />}
      <Part title="Ruled out" lines={record.ruledOut.map(({ is, by }) => `${is}, by ${by}`)} />
      <Part title="Notes" lines={record.notes.map(({ at, text }) => `${minuteOf(at)}: ${text}`)} />
      <p class="hint">
        Walked with "{record.tree.title}" ({record.tree.id}, {record.tree.digest.slice(0, 12)}), job{' '}
        {record.job}.
      </p>
    </>
  );
}

const minuteOf = (at: string): string => at.slice(0, 16).replace('T', ' ');

/** Sheet, instruments, what was missing, known-good values, and the other trees that the job went on with. */
function benchLines({ sheet, bench, readings, laterTrees }: JobRecord): readonly string[] {
  const twins = readings.flatMap(({ is, twin }) => (twin === null ? [] : [`${is}: ${twin}`]));
  return [
    ...(sheet === null ? [] : [`Board sheet: ${sheet.title}`]),
    ...(bench?.instruments ?? []),
    ...(bench === null || bench.lacking.length === 0 ? [] : [`Not there: ${bench.lacking.join(', ')}`]),
    ...[...new Set(twins)].map((text) => `Known-good board, ${text}`),
    ...laterTrees.map(
      ({ title, why }) => `${why === 'newer' ? 'Moved to the newer' : 'Went on in'} "${title}"`,
    ),
  ];
}
