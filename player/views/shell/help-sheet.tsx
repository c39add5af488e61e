import type { JSX } from 'preact';
import { Dialog } from '../../parts/dialog.tsx';

/** A key as it is drawn, and what it does. */
export type KeyLine = readonly [string, string];

const walkKeys: readonly KeyLine[] = [
  ['Enter', 'The main action. In an empty or refused field it does nothing'],
  ['1 … 9', 'Choose from a row, while the field is empty'],
  ['=', 'The value from before still stands, while the field is empty'],
  ['Alt B', 'One step back'],
  ['Alt C', 'This cannot be read'],
  ['Alt A', 'The rest of a row reads the same'],
  ['Alt J', 'It worked: one more try that did'],
  ['Alt K', 'It failed: one more try that did not'],
  ['Alt R', 'The board runs now, or fails again, where a fault comes and goes'],
  ['Alt N', 'Write a note'],
  ['Alt W', 'Write down open work'],
  ['Alt S', 'How the board is set'],
  ['Alt U', 'The suspects, and what moved them'],
  ['Alt Q', 'Take the quicker check that is offered: a detour'],
  ['Alt T', "Leave the detour: back to the tree's order"],
  ['Alt M', 'Everything else'],
  ['?', 'This list, while the field is empty'],
  ['Esc', 'Close a sheet'],
];

interface HelpSheetProps {
  /** Keys of this screen, where they are not those of a job. */
  readonly keys?: readonly KeyLine[] | undefined;
  readonly onClose: () => void;
}

/** Every key there is. */
export function HelpSheet({ keys = walkKeys, onClose }: HelpSheetProps): JSX.Element {
  return (
    <Dialog title="Keys" onClose={onClose}>
      <dl class="key-list">
        {keys.map(([key, does]) => (
          <div key={key}>
            <dt>
              <kbd>{key}</kbd>
            </dt>
            <dd>{does}</dd>
          </div>
        ))}
      </dl>
      <p class="hint">A foot switch that sends Enter works as the main action on every step.</p>
    </Dialog>
  );
}
