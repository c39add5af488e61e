import type { JSX } from 'preact';
import { type Audience, outcomeWords, suspectLines } from '../../../engine/job/index.ts';
import type { JobRecord, RecordRemedy } from '../../../engine/model/record.ts';
import { BenchCopy } from './bench-copy.tsx';
import { dayText } from './day-text.ts';
import { Part } from './part.tsx';
import { RecordReadings } from './record-readings.tsx';

interface RecordSheetProps {
  readonly record: JobRecord;
  readonly audience: Audience;
}

/** The sheet itself: one page that the owner understands; the bench copy goes on with every reading. */
export function RecordSheet({ record, audience }: RecordSheetProps): JSX.Element {
  const causes = record.remedies.filter(({ effect }) => effect !== 'no effect');
  const tried = record.remedies.filter(({ effect }) => effect === 'no effect');
  const parts = record.remedies.flatMap((remedy) => remedy.parts);
  return (
    <article class="record">
      <header>
        <h1>{record.board}</h1>
        <p class={`record-outcome record-${record.outcome.replace(' ', '-')}`}>
          {outcomeWords[record.outcome]}
        </p>
      </header>
      <div class="graduated" aria-hidden="true" />
      <dl class="facts">
        <Fact name="Owner" value={record.owner} />
        <Fact name="As brought in" value={record.story} />
        <Fact name="Symptom" value={record.tree.symptom} />
        <Fact name="On the bench" value={benchDays(record)} />
        {record.settings.map(({ id, is, value }) => (
          <Fact key={id} name={is} value={value} />
        ))}
      </dl>
      <Part title="What was wrong" lines={causes.map(causeText)} />
      <Part
        title="Parts"
        lines={parts.map(({ what, cost }) => (cost === null ? what : `${what}: ${cost}`))}
      />
      <Part title="Tried without effect" lines={tried.map(causeText)} />
      {record.proof.length > 0 && (
        <section>
          <h2>Proof</h2>
          <RecordReadings readings={record.proof} />
        </section>
      )}
      {record.outcome === 'not mended' && <Part title="What it may be" lines={suspectLines(record)} />}
      <Part title="To the owner" lines={record.closing === '' ? [] : [record.closing]} />
      <Part title="Still to do" lines={record.openWork.map(({ text }) => text)} />
      {audience === 'bench' && <BenchCopy record={record} />}
    </article>
  );
}

function benchDays({ opened, closed }: JobRecord): string {
  if (closed === null) return `since ${dayText(opened)}`;
  const [from, to] = [dayText(opened), dayText(closed)];
  return from === to ? from : `${from} to ${to}`;
}

function Fact({ name, value }: { readonly name: string; readonly value: string }): JSX.Element | null {
  if (value === '') return null;
  return (
    <div>
      <dt>{name}</dt>
      <dd>{value}</dd>
    </div>
  );
}

const effectWords: Record<RecordRemedy['effect'], string> = {
  'waits for proof': ', not proven yet',
  mended: '',
  'more is wrong': ', not the only fault',
  'no effect': '',
};

function causeText({ is, which, at, effect }: RecordRemedy): string {
  const where = which === '' ? '' : ` (${which})`;
  return `${is}${where}, ${dayText(at)}${effectWords[effect]}`;
}
