import type { JSX } from 'preact';
import { minutesText } from '../../models/minutes-text.ts';
import type { DrillRun } from '../../models/practice/drill-run.ts';
import { Action } from '../../parts/action.tsx';
import { Dialog } from '../../parts/dialog.tsx';

/** A hint with its cost, and the question before a drill is given up. */
export function DrillSheets({ run }: { readonly run: DrillRun }): JSX.Element | null {
  const sheet = run.sheet.value;
  const close = () => (run.sheet.value = null);
  if (sheet === null) return null;
  if (sheet.sheet === 'give up') {
    return (
      <Dialog title="Give this board up?" onClose={close}>
        <p>The fault is shown, and what each of your checks was worth. The drill counts as not found.</p>
        <p class="sheet-foot">
          <Action rank="main" onAct={run.giveUp}>
            Give up and show it
          </Action>
          <Action onAct={close}>Go on measuring</Action>
        </p>
      </Dialog>
    );
  }
  return sheet.text === null ? (
    <Dialog title="A hint" onClose={close}>
      <p>
        It costs <strong>{minutesText(sheet.cost)}</strong> of bench time, and it stands in the debrief.
      </p>
      <p class="sheet-foot">
        <Action rank="main" onAct={run.takeHint}>
          Take it
        </Action>
        <Action onAct={close}>Do without</Action>
      </p>
    </Dialog>
  ) : (
    <Dialog key="told" title="A hint" onClose={close}>
      <p class="task" role="status">
        {sheet.text}
      </p>
      <p class="hint">It stays in sight beside the board.</p>
      <p class="sheet-foot">
        <Action rank="main" onAct={close}>
          Go on
        </Action>
      </p>
    </Dialog>
  );
}
