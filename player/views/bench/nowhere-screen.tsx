import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { BlankState } from '../../parts/blank-state.tsx';
import { Shell } from '../shell/shell.tsx';

interface NowhereScreenProps {
  readonly app: App;
  readonly place: string;
}

/** An address that leads nowhere. */
export function NowhereScreen({ app, place }: NowhereScreenProps): JSX.Element {
  return (
    <Shell app={app} title="Nothing here">
      <main class="page">
        <BlankState title="Nothing stands here">
          <p>The address "{place}" leads to no screen. Your jobs are on the bench.</p>
          <a class="action action-main" href="#/">
            To the bench
          </a>
        </BlankState>
      </main>
    </Shell>
  );
}
