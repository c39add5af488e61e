import type { JSX } from 'preact';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Expectation, ReadingQuestion, Session } from '../../../engine/run/index.ts';
import { becauseWords } from '../../models/because-words.ts';
import { ExpectedPlate } from '../../parts/expected-plate.tsx';

interface ReadingHeadProps {
  /** Id of what the field is described by. */
  readonly id: string;
  readonly session: Session;
  readonly reading: Reading;
  readonly place: ReadingQuestion['place'];
  /** How many tries a proof asks for. */
  readonly tries?: number | null;
  readonly expected: Expectation;
}

/** Which reading this is, and what it should read on this board now. */
export function ReadingHead(props: ReadingHeadProps): JSX.Element {
  const { id, session, reading, place, tries = null, expected } = props;
  const { settings } = session.loaded;
  const nameOf = (missing: string) =>
    missing === 'twin' ? 'what a known-good board shows' : (settings.get(missing)?.is ?? missing);
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
          text={tries === null ? expected.text : `${tries} of ${tries}`}
          because={becauseWords(expected.because)}
          size={reading.measure.kind === 'quantity' ? 'hero' : 'large'}
          missing={(expected.resolved?.missing ?? []).map(nameOf)}
          contradiction={expected.resolved?.contradiction ?? null}
        />
      </div>
    </>
  );
}
