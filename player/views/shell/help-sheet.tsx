import type { JSX } from 'preact';
import { Dialog } from '../../parts/dialog.tsx';

const keys: readonly (readonly [string, string])[] = [
  ['Enter', 'The main action. In an empty or refused field it does nothing'],
  ['1 … 9', 'Choose from a row, while the field is empty'],
  ['=', 'The value from before still stands, while the field is empty'],
  ['Alt B', 'One step back'],
  ['Alt C', 'This cannot be read'],
  ['Alt R', 'The board runs now, or fails again, where a fault comes and goes'],
  ['Alt N', 'Write a note'],
  ['Alt W', 'Write down open work'],
  ['Alt S', 'How the board is set'],
  ['Alt M', 'Everything else'],
  ['?', 'This list, while the field is empty'],
  ['Esc', 'Close a sheet'],
];

/** Every key there is. */
export function HelpSheet({ onClose }: { readonly onClose: () => void }): JSX.Element {
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
