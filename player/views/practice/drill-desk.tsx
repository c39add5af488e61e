import type { ComponentChildren, JSX } from 'preact';
import type { DrillRun } from '../../models/practice/drill-run.ts';
import { Action } from '../../parts/action.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { useDeskHeight } from '../use-desk-height.ts';

interface DrillDeskProps {
  readonly run: DrillRun;
  readonly children: ComponentChildren;
  /** Where `Back` leads; none on the first step. */
  readonly onBack?: () => void;
  /** Lesser ways on that only this step has. */
  readonly foot?: ComponentChildren;
  /** Whether a fault can be named from here, a hint taken, or the drill given up. */
  readonly open?: boolean;
}

/** The foot of every step of a drill: what is answered, and what can be done at any time. */
export function DrillDesk({ run, children, onBack, foot, open = true }: DrillDeskProps): JSX.Element {
  const desk = useDeskHeight();
  const name = () => run.go({ at: 'names' });
  const giveUp = () => (run.sheet.value = { sheet: 'give up' });
  useKeys({
    ...(onBack && { 'Alt B': onBack }),
    ...(open && { 'Alt F': name, 'Alt H': run.askForHint, 'Alt G': giveUp }),
  });
  return (
    <section class="desk" ref={desk} aria-label="Answer">
      <div class="graduated" aria-hidden="true" />
      <div class="desk-face">{children}</div>
      <footer class="desk-foot">
        {onBack !== undefined && (
          <Action rank="quiet" keys="Alt B" onAct={onBack}>
            Back
          </Action>
        )}
        {foot}
        {open && (
          <>
            <Action rank="quiet" keys="Alt F" onAct={name}>
              Name the fault
            </Action>
            <span class={onBack === undefined && foot === undefined ? '' : 'roomy'}>
              <Action rank="quiet" keys="Alt H" onAct={run.askForHint}>
                Hint
              </Action>
              <Action rank="quiet" keys="Alt G" onAct={giveUp}>
                Give up
              </Action>
            </span>
          </>
        )}
      </footer>
    </section>
  );
}
