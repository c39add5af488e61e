import type { JSX } from 'preact';
import { type Answer, suspectsFor } from '../../../../engine/run/index.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

type Undone = Extract<Answer, { readonly say: 'undone' }>['undone'];

const results: readonly { readonly undone: Undone; readonly text: string; readonly means: string }[] = [
  { undone: 'fails again', text: 'It fails again', means: 'what was touched has to do with the fault' },
  {
    undone: 'still runs',
    text: 'It still runs',
    means: 'it was something else, or the fault comes and goes',
  },
  { undone: 'not tried', text: 'It cannot be undone', means: 'the fault is not proven to be gone' },
];

/** More than these help nobody to choose. */
const told = 5;

/** Whether undoing what was touched brings the fault back, and which faults that speaks of. */
export function UndoneSheet({ job, session, onClose }: SheetProps<'undone'>): JSX.Element | null {
  const last = session.entries.findLast((entry) => entry.kind === 'runs');
  if (last?.kind !== 'runs') return null;
  const suspects = suspectsFor(session, last.touched).slice(0, told);
  const say = (answer: Answer) => async () => {
    if (await job.answer(answer)) onClose();
  };
  return (
    <Dialog title="Undo what was touched" onClose={onClose}>
      <p>Touched last: {last.touched}. Put it back as it was, and look.</p>
      <ul class="plain-list">
        {results.map(({ undone, text, means }, index) => (
          <li key={undone}>
            <button
              type="button"
              class="action action-row"
              data-first={index === 0 ? '' : undefined}
              onClick={() => void say({ say: 'undone', undone })()}
            >
              <span>
                {text}
                <small>{means}</small>
              </span>
            </button>
          </li>
        ))}
      </ul>
      {suspects.length > 0 && (
        <>
          <h3>It may have to do with</h3>
          <ul class="plain-list">
            {suspects.map(({ section, faults }) => (
              <li key={section.id}>
                <button
                  type="button"
                  class="action action-row"
                  onClick={() => void say({ say: 'go', section: section.id })()}
                >
                  <span>
                    {section.title}
                    <small>{faults.map(({ fault }) => fault.is).join('; ')}</small>
                  </span>
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <SheetNotice job={job} />
    </Dialog>
  );
}
