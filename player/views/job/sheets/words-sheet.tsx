import { useSignal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import type { Answer } from '../../../../engine/run/index.ts';
import type { OpenJob } from '../../../models/open-job.ts';
import { Action } from '../../../parts/action.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { TextField } from '../../../parts/text-field.tsx';
import { SheetNotice } from './sheet-notice.tsx';

interface WordsSheetProps {
  readonly job: OpenJob;
  readonly title: string;
  readonly label: string;
  readonly hint?: string;
  /** Words that fit often: one press takes them. */
  readonly offers?: readonly string[];
  readonly act: string;
  readonly needsWords: boolean;
  readonly tall?: boolean;
  readonly answer: (words: string) => Answer;
  readonly onClose: () => void;
  /** Once the answer is entered; it closes otherwise. */
  readonly onDone?: () => void;
  readonly children?: ComponentChildren;
}

/** A sheet with one field for words. */
export function WordsSheet(props: WordsSheetProps): JSX.Element {
  const {
    job,
    title,
    label,
    hint,
    offers = [],
    act,
    needsWords,
    tall = false,
    answer,
    onClose,
    onDone = onClose,
    children,
  } = props;
  const words = useSignal('');
  const ready = !needsWords || words.value.trim() !== '';
  const commit = async (text: string) => {
    if (await job.answer(answer(text.trim()))) onDone();
  };
  return (
    <Dialog title={title} onClose={onClose}>
      <form
        class="sheet-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (ready) void commit(words.value);
        }}
      >
        {children}
        <TextField
          label={label}
          {...(hint !== undefined && { hint })}
          value={words.value}
          onType={(text) => (words.value = text)}
          tall={tall}
          first
        />
        {offers.length > 0 && (
          <p class="offers">
            {offers.map((offer) => (
              <button
                key={offer}
                type="button"
                class="offer offer-words"
                onClick={() => (words.value = offer)}
              >
                {offer}
              </button>
            ))}
          </p>
        )}
        <SheetNotice job={job} />
        <Action rank="main" submit disabled={!ready}>
          {act}
        </Action>
      </form>
    </Dialog>
  );
}
