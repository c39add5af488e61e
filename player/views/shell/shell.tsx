import { useSignal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { KeyHint } from '../../parts/key-hint.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { HelpSheet, type KeyLine } from './help-sheet.tsx';
import { LookSheet } from './look-sheet.tsx';
import { Wordmark } from './wordmark.tsx';

interface ShellProps {
  readonly app: App;
  /** Title of the window. */
  readonly title: string;
  /** Stands in the middle of the head: which board this is. */
  readonly head?: ComponentChildren;
  /** Keys of this screen, where they are not those of a job. */
  readonly keys?: readonly KeyLine[];
  readonly children: ComponentChildren;
}

/** The frame of every screen. */
export function Shell({ app, title, head, keys, children }: ShellProps): JSX.Element {
  const sheet = useSignal<'look' | 'help' | null>(null);
  const close = () => {
    sheet.value = null;
  };
  useKeys({ '?': () => (sheet.value = 'help') });
  document.title = title === '' ? 'Deadboard' : `${title} · Deadboard`;
  return (
    <div class="shell">
      <header class="head">
        <Wordmark />
        <div class="head-middle">{head}</div>
        <button type="button" class="action action-quiet" onClick={() => (sheet.value = 'look')}>
          Look
        </button>
        <button type="button" class="action action-quiet" onClick={() => (sheet.value = 'help')}>
          <span>Keys</span>
          <KeyHint keys="?" />
        </button>
      </header>
      <div class="graduated" aria-hidden="true" />
      {children}
      {sheet.value === 'look' && <LookSheet preferences={app.preferences} onClose={close} />}
      {sheet.value === 'help' && <HelpSheet keys={keys} onClose={close} />}
    </div>
  );
}
