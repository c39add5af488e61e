import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { entryFor, readingHere } from '../../../../engine/run/index.ts';
import { observationText } from '../../../../engine/scale/index.ts';
import { Dialog } from '../../../parts/dialog.tsx';
import { type Understanding, UnderstandingLine } from '../../../parts/understanding-line.tsx';
import { AnswerRow } from '../answer-row.tsx';
import { WhereToTouch } from '../where-to-touch.tsx';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

/** The same reading on a board that works. */
export function TwinSheet({ job, session, sheet, onClose }: SheetProps<'twin'>): JSX.Element | null {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const typed = useSignal('');
  const reading = readingHere(session, sheet.reading);
  if (reading === undefined) return null;
  const answer = { say: 'twin', reading: reading.id, typed: typed.value } as const;
  const commit = async () => {
    if (await job.answer(answer)) onClose();
  };
  const entry = typed.value.trim() === '' ? null : entryFor(session, answer, '');
  const understanding: Understanding =
    entry === null
      ? { state: 'empty', hint: 'Type what the instrument shows on the board that works' }
      : entry.ok
        ? understood(entry.value.kind === 'twin' ? observationText(entry.value.observation) : '')
        : { state: 'refused', ...entry.refusal };
  return (
    <Dialog title="On the known-good board" onClose={onClose}>
      <div class="sheet-form">
        <p>
          <b>{reading.is}</b>, on the board that works, taken in the same way. What this board should read
          follows from it.
        </p>
        <WhereToTouch session={session} reading={reading} />
        <AnswerRow
          id={`${id}-field`}
          label={`${reading.is}, on the known-good board`}
          typed={typed.value}
          unit={reading.measure.kind === 'quantity' ? reading.measure.unit : null}
          understanding={understanding}
          describedBy={`${id}-line`}
          field={field}
          first
          onType={(text) => (typed.value = text)}
          onCommit={() => void commit()}
        />
        <div id={`${id}-line`}>
          <UnderstandingLine understanding={understanding} onOffer={(text) => (typed.value = text)} />
        </div>
        <SheetNotice job={job} />
      </div>
    </Dialog>
  );
}

/** It is no evidence on this board: nothing is judged. */
const understood = (value: string): Understanding => ({
  state: 'understood',
  ...{ value, bands: [], normal: null, fraction: null, remarks: [], leads: [] },
});
