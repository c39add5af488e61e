import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { createOpenJob } from '../../models/open-job.ts';
import { BlankState } from '../../parts/blank-state.tsx';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { Walk } from './walk.tsx';

interface JobScreenProps {
  readonly app: App;
  readonly id: string;
}

/** One job on the bench. */
export function JobScreen({ app, id }: JobScreenProps): JSX.Element {
  const job = useModel(() => createOpenJob(app.ports, id));
  const state = job.state.value;
  if (state.state === 'ready') return <Walk app={app} job={job} session={state.session} />;
  return (
    <Shell app={app} title="Job">
      <main class="page">
        {state.state === 'loading' ? (
          <BlankState title="Taking the job up" />
        ) : (
          <BlankState title="This job cannot be opened" trouble>
            <p>{state.why}.</p>
            <button type="button" class="action" onClick={() => void job.load()}>
              Try again
            </button>
            <a class="action action-main" href="#/">
              To the bench
            </a>
          </BlankState>
        )}
      </main>
    </Shell>
  );
}
