import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { type Answer, entryFor, readingHere } from '../../../../engine/run/index.ts';
import { observedWords } from '../../../models/understanding-of.ts';
import { Action } from '../../../parts/action.tsx';
import { Choice } from '../../../parts/choice.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { ReadingField } from '../../../parts/reading-field.tsx';
import { type Understanding, UnderstandingLine } from '../../../parts/understanding-line.tsx';
import { BoardStateChoice } from '../board-state-choice.tsx';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

type Manner = 'correction' | 'again';

/** An older reading, taken once more. */
export function RetakeSheet({ job, session, sheet, onClose }: SheetProps<'retake'>): JSX.Element | null {
  const id = useId();
  const typed = useSignal('');
  const manner = useSignal<Manner>('correction');
  const reading = readingHere(session, sheet.reading);
  if (reading === undefined) return null;
  const answer: Answer = {
    say: 'retake',
    of: sheet.of,
    typed: typed.value,
    manner: manner.value,
    board: job.board.value,
  };
  const understanding = ((): Understanding => {
    if (typed.value.trim() === '') return { state: 'empty', hint: 'As for the first time' };
    const entry = entryFor(session, answer, '');
    if (!entry.ok) return { state: 'refused', ...entry.refusal };
    if (entry.value.kind !== 'retaken')
      return { state: 'refused', text: 'This is not a reading', offers: [] };
    return {
      state: 'understood',
      ...observedWords(session, reading, entry.value.observation),
      fraction: null,
      leads: [],
    };
  })();
  const commit = async () => {
    if (understanding.state === 'understood' && (await job.answer(answer))) onClose();
  };
  return (
    <Dialog title={`Retake: ${reading.is}`} onClose={onClose}>
      <form
        class="sheet-form"
        onSubmit={(event) => {
          event.preventDefault();
          void commit();
        }}
      >
        <Choice
          label="The new value"
          value={manner.value}
          onChoose={(next: Manner) => (manner.value = next)}
          choices={[
            {
              value: 'correction',
              text: 'corrects the old one',
              means: 'it was misread: the walk is gone through again',
            },
            { value: 'again', text: 'comes beside it', means: 'both were read so: it adds to what is known' },
          ]}
        />
        <BoardStateChoice job={job} session={session} />
        <ReadingField
          id={`${id}-field`}
          label={reading.is}
          typed={typed.value}
          unit={reading.measure.kind === 'quantity' ? reading.measure.unit : null}
          refused={understanding.state === 'refused'}
          describedBy={`${id}-line`}
          onType={(text) => (typed.value = text)}
          first
        />
        <div id={`${id}-line`}>
          <UnderstandingLine understanding={understanding} onOffer={(text) => (typed.value = text)} />
        </div>
        <SheetNotice job={job} />
        <Action rank="main" submit disabled={understanding.state !== 'understood'}>
          Enter
        </Action>
        <Action
          rank="quiet"
          onAct={() => (job.dialog.value = { dialog: 'strike', reading: sheet.reading, of: sheet.of })}
        >
          Strike it out instead
        </Action>
      </form>
    </Dialog>
  );
}
