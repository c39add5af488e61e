import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { expectationOf } from '../../../engine/run/index.ts';
import { understandingOf } from '../../models/understanding-of.ts';
import { Action } from '../../parts/action.tsx';
import { UnderstandingLine } from '../../parts/understanding-line.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { AnswerRow } from './answer-row.tsx';
import { BoardStateToggle } from './board-state-toggle.tsx';
import { Desk } from './desk.tsx';
import { KnownValue } from './known-value.tsx';
import { ReadingFace } from './reading-face.tsx';
import { ReadingHead } from './reading-head.tsx';
import { ReadingWait } from './reading-wait.tsx';
import type { StepProps } from './step-props.ts';
import { useFieldFocus } from './use-field-focus.ts';

/** The instrument: what it should read, the scale, the field, and how what is typed is understood. */
export function ReadingDesk({ app, job, session, question }: StepProps<'reading'>): JSX.Element {
  const { reading, purpose, known } = question;
  const id = useId();
  const field = useFieldFocus(job);
  const typed = job.typed.value;
  const { understanding, observation } = understandingOf(session, reading, typed);
  const expected = expectationOf(session, reading);
  const offersKnown = typed === '' && known !== null && known.bands.length > 0;

  const commit = () => void job.answer({ say: 'value', reading: reading.id, typed, board: job.board.value });
  const confirm = () => {
    if (offersKnown) void job.answer({ say: 'confirm' });
  };
  const type = (text: string) => {
    job.typed.value = text;
    field.current?.focus();
  };
  useKeys({ '=': confirm });

  const foot = (
    <>
      {purpose === 'check' && (
        <Action rank="quiet" keys="Alt C" onAct={() => (job.dialog.value = { dialog: 'cannot-read' })}>
          Cannot read
        </Action>
      )}
      <BoardStateToggle job={job} session={session} />
    </>
  );
  return (
    <Desk job={job} foot={foot}>
      <ReadingHead id={`${id}-expected`} session={session} question={question} expected={expected} />
      <ReadingFace reading={reading} expected={expected} observation={observation} onType={type} />
      <ReadingWait app={app} job={job} session={session} reading={reading} />
      <AnswerRow
        id={`${id}-field`}
        label={reading.is}
        typed={typed}
        unit={reading.measure.kind === 'quantity' ? reading.measure.unit : null}
        understanding={understanding}
        describedBy={`${id}-expected ${id}-line`}
        field={field}
        onType={(text) => (job.typed.value = text)}
        onCommit={commit}
      />
      <div id={`${id}-line`}>
        {offersKnown ? (
          <KnownValue session={session} known={known} onConfirm={confirm} />
        ) : (
          <UnderstandingLine understanding={understanding} onOffer={type} />
        )}
      </div>
    </Desk>
  );
}
