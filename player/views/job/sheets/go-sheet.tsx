import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { pathOf } from '../../../../engine/run/index.ts';
import { narrow } from '../../../models/narrow.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { TextField } from '../../../parts/text-field.tsx';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

/** Any step of the tree, those walked already first. */
export function GoSheet({ job, session, onClose }: SheetProps<'go'>): JSX.Element {
  const typed = useSignal('');
  const walked = new Set(pathOf(session.position).map(({ id }) => id));
  const all = session.loaded.tree.sections.filter(({ id }) => id !== session.position.section?.id);
  const ordered = [...all.filter(({ id }) => walked.has(id)), ...all.filter(({ id }) => !walked.has(id))];
  const fitting = narrow(ordered, typed.value, ({ title }) => title);
  const go = async (section: string) => {
    if (await job.answer({ say: 'go', section })) onClose();
  };
  return (
    <Dialog title="Go on at another step" onClose={onClose}>
      <div class="sheet-form">
        <TextField
          label="Step"
          hint="Typing narrows the list. What was read stays known"
          value={typed.value}
          onType={(text) => (typed.value = text)}
          first
        />
        <SheetNotice job={job} />
        <p class="hint" role="status">
          {fitting.length === 0 && 'No step has these words. Fewer words find more.'}
        </p>
        <ul class="plain-list">
          {fitting.map(({ id, title }) => (
            <li key={id}>
              <button type="button" class="action action-row" onClick={() => void go(id)}>
                <span>{title}</span>
                {walked.has(id) && <small>walked</small>}
              </button>
            </li>
          ))}
        </ul>
      </div>
    </Dialog>
  );
}
