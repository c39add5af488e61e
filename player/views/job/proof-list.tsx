import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import {
  latest,
  nameHere,
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
  const now = useRef<HTMLLIElement>(null);
  const asked = question.reading.id;
  useEffect(() => now.current?.scrollIntoView?.({ block: 'nearest' }), [asked]);
  return (
    <ol class="proof">
      {readingsOf(session).map((id) => {
        const known = taken.has(id) ? latest(session, id) : null;
        const verdict = known === null ? null : standing(session, id, known);
        const value = known?.observation == null ? null : observationText(known.observation);
        return (
          <li
            key={id}
            ref={id === asked ? now : null}
            class={`proof-row proof-${verdict ?? 'due'}`}
            aria-current={id === asked ? 'step' : undefined}
          >
            <span class="proof-name">{nameHere(session, id)}</span>
            <span class="proof-value">{value !== null && <Figure text={value} size="row" />}</span>
            <span class="proof-word">
              {verdict === null ? (id === asked ? 'now' : 'to read') : words[verdict]}
            </span>
          </li>
        );
      })}
    </ol>
  );
}
