import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { createRecordPage, type RecordPage } from '../../models/record.ts';
import { placeOfRoute } from '../../models/route.ts';
import { Action } from '../../parts/action.tsx';
import { BlankState } from '../../parts/blank-state.tsx';
import { Choice } from '../../parts/choice.tsx';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { RecordSheet } from './record-sheet.tsx';

interface RecordScreenProps {
  readonly app: App;
  readonly id: string;
}

/** The record of a job: a page for the owner, and the bench copy. */
export function RecordScreen({ app, id }: RecordScreenProps): JSX.Element {
  const page = useModel(() => createRecordPage(app.ports, id));
  const record = page.record.value;
  return (
    <Shell app={app} title="Record">
      <main class="page">
        {record.state === 'loading' && <BlankState title="Writing the record" />}
        {record.state === 'failed' && (
          <BlankState title="There is no record" trouble>
            <p>{record.why}.</p>
            <a class="action action-main" href="#/">
              To the bench
            </a>
          </BlankState>
        )}
        {record.state === 'ready' && (
          <>
            <RecordTools page={page} back={`#${placeOfRoute({ screen: 'job', id })}`} />
            <RecordSheet record={record.value} audience={page.audience.value} />
          </>
        )}
      </main>
    </Shell>
  );
}

function RecordTools({ page, back }: { readonly page: RecordPage; readonly back: string }): JSX.Element {
  return (
    <div class="record-tools">
      <a class="action action-quiet" href={back}>
        Back to the job
      </a>
      <Choice
        label="Copy for"
        value={page.audience.value}
        onChoose={(audience: 'owner' | 'bench') => (page.audience.value = audience)}
        choices={[
          { value: 'owner', text: 'for the owner' },
          { value: 'bench', text: 'for the bench' },
        ]}
      />
      <span class="record-save">
        <Action rank="quiet" onAct={page.saveText}>
          Save as text
        </Action>
        <Action rank="quiet" onAct={page.saveData}>
          Save as data
        </Action>
      </span>
      <Action rank="main" onAct={page.print}>
        Print
      </Action>
    </div>
  );
}
