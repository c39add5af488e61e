import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { createBench } from '../../models/bench.ts';
import { KeyHint } from '../../parts/key-hint.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { Shell } from '../shell/shell.tsx';
import { useModel } from '../use-model.ts';
import { JobsOnBench } from './jobs-on-bench.tsx';

/** The first screen: what this is, the way in, and the jobs that wait. */
export function BenchScreen({ app }: { readonly app: App }): JSX.Element {
  const bench = useModel(() => createBench(app.ports));
  useKeys({ Enter: () => app.go({ screen: 'symptoms' }) });
  return (
    <Shell app={app} title="">
      <main class="page">
        <h1 class="statement">From a dead board, check by check, to a proven repair.</h1>
        <nav class="doors" aria-label="Ways in">
          <a class="action action-main door" href="#/symptoms" aria-keyshortcuts="Enter">
            <span>Mend a board</span>
            <KeyHint keys="Enter" />
          </a>
          <a class="action door" href="#/practise">
            Practise
          </a>
        </nav>
        <section aria-labelledby="on-the-bench">
          <div class="section-head">
            <h2 id="on-the-bench">On the bench</h2>
            <span>
              <a class="action action-quiet" href="#/instruments">
                Instruments
              </a>
              <button type="button" class="action action-quiet" onClick={() => void bench.takeIn()}>
                Take in a job file
              </button>
            </span>
          </div>
          <p role="status" class="said">
            {bench.said.value}
          </p>
          <JobsOnBench bench={bench} />
        </section>
      </main>
    </Shell>
  );
}
