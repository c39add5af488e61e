import type { JSX } from 'preact';
import type { DialogName } from '../../../models/dialog-name.ts';
import { placeOfRoute } from '../../../models/route.ts';
import { saveJob } from '../../../models/save-job.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { KeyHint } from '../../../parts/key-hint.tsx';
import type { SheetProps } from './sheet-props.ts';

interface Line {
  readonly text: string;
  readonly means: string;
  readonly keys?: string;
  readonly act: () => void;
}

type Plain =
  | 'note'
  | 'todo'
  | 'settings'
  | 'board'
  | 'instruments'
  | 'runs'
  | 'undone'
  | 'go'
  | 'close'
  | 'reopen';

/** Everything that can be done with a job besides the step that is due. */
export function MoreSheet({ app, job, session, onClose }: SheetProps<'more'>): JSX.Element {
  const open = (dialog: Plain) => () => {
    job.dialog.value = { dialog } satisfies DialogName;
  };
  const closed = session.closed !== null;
  const ran = session.entries.findLast(({ kind }) => kind === 'runs');
  const lines: readonly Line[] = [
    { text: 'Note', means: 'what you saw or did', keys: 'Alt N', act: open('note') },
    { text: 'Open work', means: 'what is still to do on this board', keys: 'Alt W', act: open('todo') },
    {
      text: 'How it is set',
      means: 'jumpers and markings; change a setting',
      keys: 'Alt S',
      act: open('settings'),
    },
    ...(session.board === null
      ? []
      : [{ text: 'The board', means: 'its pictures and what its sheet says', act: open('board') }]),
    {
      text: 'Instruments',
      means: 'what is at this bench, and how far off it can be',
      act: open('instruments'),
    },
    ...(closed
      ? []
      : [
          { text: 'Go on at another step', means: 'a detour; what was read stays known', act: open('go') },
          { text: 'It runs all of a sudden', means: 'say what was touched last', act: open('runs') },
          ...(ran?.kind === 'runs' && ran.undone === 'not tried'
            ? [{ text: 'Undo what was touched', means: 'does the fault come back?', act: open('undone') }]
            : []),
        ]),
    {
      text: 'Record',
      means: 'the page for the owner and the bench copy',
      act: () => app.ports.browser.go(placeOfRoute({ screen: 'record', id: job.id }), 'push'),
    },
    {
      text: 'Save as a file',
      means: 'the whole job, to keep or to move to another bench',
      act: () => {
        saveJob(app.ports.files, job.id, session);
        onClose();
      },
    },
    closed
      ? { text: 'Take it up again', means: 'the board came back', act: open('reopen') }
      : { text: 'Close the job', means: 'the work ends here', act: open('close') },
  ];
  return (
    <Dialog title="More" onClose={onClose}>
      <ul class="plain-list">
        {lines.map(({ text, means, keys, act }, index) => (
          <li key={text}>
            <button
              type="button"
              class="action action-row"
              data-first={index === 0 ? '' : undefined}
              onClick={act}
            >
              <span>
                {text}
                <small>{means}</small>
              </span>
              {keys !== undefined && <KeyHint keys={keys} />}
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
