import type { JSX } from 'preact';
import type { Expectation, ReadingQuestion, Session } from '../../../engine/run/index.ts';
import { becauseWords } from '../../models/because-words.ts';
import { ExpectedPlate } from '../../parts/expected-plate.tsx';

interface ReadingHeadProps {
  /** Id of what the field is described by. */
  readonly id: string;
  readonly session: Session;
  readonly question: ReadingQuestion;
  readonly expected: Expectation;
}

/** Which reading this is, and what it should read on this board now. */
export function ReadingHead({ id, session, question, expected }: ReadingHeadProps): JSX.Element {
  const { reading, place } = question;
  const { settings } = session.loaded;
  return (
    <>
      <div class="desk-title">
        <h2 tabIndex={-1}>{reading.is}</h2>
        {place.of > 1 && (
          <span class="place">
            {place.at} of {place.of}
          </span>
        )}
      </div>
      <div id={id}>
        <ExpectedPlate
          text={expected.text}
          because={becauseWords(expected.because)}
          size={reading.measure.kind === 'quantity' ? 'hero' : 'large'}
          missing={(expected.resolved?.missing ?? []).map((setting) => settings.get(setting)?.is ?? setting)}
          contradiction={expected.resolved?.contradiction ?? null}
        />
      </div>
    </>
  );
}
