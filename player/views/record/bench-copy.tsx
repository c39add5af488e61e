import type { JSX } from 'preact';
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
      <Part title="Ruled out" lines={record.ruledOut.map(({ is, by }) => `${is}, by ${by}`)} />
      <Part
        title="Notes"
        lines={record.notes.map(({ at, text }) => `${at.slice(0, 16).replace('T', ' ')}: ${text}`)}
      />
      <p class="hint">
        Walked with "{record.tree.title}" ({record.tree.id}, {record.tree.digest.slice(0, 12)}), job{' '}
        {record.job}.
      </p>
    </>
  );
}
