import type { JSX } from 'preact';
import {
  latest,
  type ReadingQuestion,
  readingsOf,
  type Session,
  standing,
} from '../../../engine/run/index.ts';
import { observationText } from '../../../engine/scale/index.ts';
import { Figure } from '../../parts/figure.tsx';

interface ProofListProps {
  readonly session: Session;
  readonly question: ReadingQuestion;
}

const words = { normal: 'good', wrong: 'not good', open: 'not clear' } as const;

/** The readings that prove the repair, going good one by one. */
export function ProofList({ session, question }: ProofListProps): JSX.Element {
  const { taken } = session.position;
  return (
    <ol class="proof">
      {readingsOf(session).map((id) => {
        const known = taken.has(id) ? latest(session, id) : null;
        const verdict = known === null ? null : standing(session, id, known);
        const value = known?.observation == null ? null : observationText(known.observation);
        return (
          <li
            key={id}
            class={`proof-row proof-${verdict ?? 'due'}`}
            aria-current={id === question.reading.id ? 'step' : undefined}
          >
            <span class="proof-name">{session.loaded.readings.get(id)?.is ?? id}</span>
            <span class="proof-value">{value !== null && <Figure text={value} size="row" />}</span>
            <span class="proof-word">
              {verdict === null ? (id === question.reading.id ? 'now' : 'to read') : words[verdict]}
            </span>
          </li>
        );
      })}
    </ol>
  );
}
