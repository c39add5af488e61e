import type { ComponentChildren, JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Reading } from '../../../engine/model/reading.ts';
import { expectationOf, type Known, type ReadingQuestion, type Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import type { OpenJob } from '../../models/open-job.ts';
import type { Understood } from '../../models/understanding-of.ts';
import { UnderstandingLine } from '../../parts/understanding-line.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { AnswerRow } from './answer-row.tsx';
import { Desk } from './desk.tsx';
import { KnownValue } from './known-value.tsx';
import { ReadingFace } from './reading-face.tsx';
import { ReadingHead } from './reading-head.tsx';
import { ReadingWait } from './reading-wait.tsx';
import { useFieldFocus } from './use-field-focus.ts';

interface ReadingDeskProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
  readonly reading: Reading;
  readonly place: ReadingQuestion['place'];
  /** How many tries a proof asks for. */
  readonly tries?: number | null;
  /** Offered for one-key confirmation while nothing is typed. */
  readonly known?: Known | null;
  /** How what stands in the field is understood. */
  readonly understood: Understood;
  readonly foot: ComponentChildren;
}

/** The instrument: what it should read, the scale, the field, and how what is typed is understood. */
export function ReadingDesk(props: ReadingDeskProps): JSX.Element {
  const { app, job, session, reading, place, tries = null, known = null, understood, foot } = props;
  const { understanding, observation } = understood;
  const id = useId();
  const field = useFieldFocus(job);
  const typed = job.typed.value;
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

  return (
    <Desk job={job} foot={foot}>
      <ReadingHead
        id={`${id}-expected`}
        session={session}
        reading={reading}
        place={place}
        tries={tries}
        expected={expected}
      />
      <ReadingFace
        session={session}
        reading={reading}
        expected={expected}
        tries={tries}
        typed={typed}
        observation={observation}
        onType={type}
      />
      <ReadingWait app={app} job={job} session={session} reading={reading} />
      <AnswerRow
        id={`${id}-field`}
        label={reading.is}
        typed={typed}
        unit={unitOf(reading)}
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

/** The unit a bare number takes. */
const unitOf = ({ measure }: Reading): string | null => {
  const one = measure.kind === 'each' ? measure.of : measure;
  return one.kind === 'quantity' && one.unit !== '' ? one.unit : null;
};
