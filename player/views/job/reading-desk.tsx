import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { expectationOf, preview } from '../../../engine/run/index.ts';
import { becauseWords } from '../../models/because-words.ts';
import { understandingOf } from '../../models/understanding-of.ts';
import { Action } from '../../parts/action.tsx';
import { ExpectedPlate } from '../../parts/expected-plate.tsx';
import { ReadingField } from '../../parts/reading-field.tsx';
import { UnderstandingLine } from '../../parts/understanding-line.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { BoardStateToggle } from './board-state-toggle.tsx';
import { Desk } from './desk.tsx';
import { KnownValue } from './known-value.tsx';
import { ReadingFace } from './reading-face.tsx';
import { ReadingWait } from './reading-wait.tsx';
import type { StepProps } from './step-props.ts';
import { useFieldFocus } from './use-field-focus.ts';

/** The instrument: what it should read, the scale, the field, and how what is typed is understood. */
export function ReadingDesk({ app, job, session, question }: StepProps<'reading'>): JSX.Element {
  const { reading, place, purpose, known } = question;
  const id = useId();
  const field = useFieldFocus(job);
  const typed = job.typed.value;
  const understanding = understandingOf(session, reading, typed);
  const seen = typed.trim() === '' ? null : preview(session, typed);
  const expected = expectationOf(session, reading);
  const valid = understanding.state === 'understood';

  const commit = async () => {
    if (!valid || job.writing.value) return;
    await job.answer({ say: 'value', reading: reading.id, typed, board: job.board.value });
  };
  const offersKnown = typed === '' && known !== null && known.bands.length > 0;
  const confirm = async () => {
    if (offersKnown) await job.answer({ say: 'confirm' });
  };
  const type = (text: string) => {
    job.typed.value = text;
    field.current?.focus();
  };
  useKeys({ '=': () => void confirm() });

  return (
    <Desk
      job={job}
      foot={
        <>
          {purpose === 'check' && (
            <Action rank="quiet" keys="Alt C" onAct={() => (job.dialog.value = { dialog: 'cannot-read' })}>
              Cannot read
            </Action>
          )}
          <BoardStateToggle job={job} session={session} />
        </>
      }
    >
      <div class="desk-title">
        <h2 id={`${id}-name`} tabIndex={-1}>
          {reading.is}
        </h2>
        {place.of > 1 && (
          <span class="place">
            {place.at} of {place.of}
          </span>
        )}
      </div>
      <div id={`${id}-expected`}>
        <ExpectedPlate
          text={expected.text}
          because={becauseWords(expected.because)}
          size={reading.measure.kind === 'quantity' ? 'hero' : 'large'}
          missing={expected.resolved?.missing ?? []}
          contradiction={expected.resolved?.contradiction ?? null}
        />
      </div>
      <ReadingFace
        reading={reading}
        expected={expected}
        observation={seen?.ok ? seen.value.observation : null}
        onType={type}
      />
      <ReadingWait app={app} job={job} session={session} reading={reading} />
      <form
        class="answer-row"
        onSubmit={(event) => {
          event.preventDefault();
          void commit();
        }}
      >
        <ReadingField
          id={`${id}-field`}
          label={reading.is}
          typed={typed}
          unit={reading.measure.kind === 'quantity' ? reading.measure.unit : null}
          refused={understanding.state === 'refused'}
          describedBy={`${id}-expected ${id}-line`}
          onType={(text) => (job.typed.value = text)}
          innerRef={field}
        />
        <Action rank="main" keys="Enter" submit disabled={!valid}>
          Enter
        </Action>
      </form>
      <div id={`${id}-line`}>
        {offersKnown ? (
          <KnownValue session={session} known={known} onConfirm={() => void confirm()} />
        ) : (
          <UnderstandingLine understanding={understanding} onOffer={type} />
        )}
      </div>
    </Desk>
  );
}
