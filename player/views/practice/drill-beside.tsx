import type { JSX } from 'preact';
import type { Drill } from '../../../engine/practice/drill.ts';
import { bandWords } from '../../models/band-words.ts';
import { answersOf, type DrillAnswer } from '../../models/practice/answer-of.ts';
import type { DrillRun } from '../../models/practice/drill-run.ts';
import { sessionOfDrill } from '../../models/practice/session-of-drill.ts';
import { asShown } from '../../parts/as-shown.ts';
import { Figure } from '../../parts/figure.tsx';
import { Ledger } from '../../parts/ledger.tsx';

interface DrillBesideProps {
  readonly run: DrillRun;
  readonly drill: Drill;
}

const wide = '(min-width: 70rem)';

/** What was read so far, what was named, and the hints. */
export function DrillBeside({ run, drill }: DrillBesideProps): JSX.Element {
  const open = globalThis.matchMedia?.(wide).matches ?? true;
  const answers = answersOf(drill, sessionOfDrill(drill));
  const place = run.place.value;
  const unjudged = place.at === 'answer' && place.said === null ? place.reading : null;
  const named = drill.events.flatMap((event) => (event.kind === 'named' ? [event.fault] : []));
  const hints = drill.events.flatMap((event) => (event.kind === 'hinted' ? [event.hint] : []));
  return (
    <aside class="beside" aria-label="What is known so far">
      <Ledger title="Read so far" count={answers.length} open={open}>
        {answers.length === 0 ? (
          <p class="hint">Nothing yet.</p>
        ) : (
          <ul class="rows">
            {answers.map((answer) => (
              <Row key={answer.reading.id} answer={answer} judged={answer.reading.id !== unjudged} />
            ))}
          </ul>
        )}
      </Ledger>
      {named.length > 0 && (
        <Ledger title="Named, and not the cause" count={named.length} open={open}>
          <ul class="rows">
            {named.map((id, index) => (
              <li key={index} class="row">
                <span class="row-name">
                  {drill.tree.faults.find((one) => one.id === id)?.is ?? 'None of these'}
                </span>
              </li>
            ))}
          </ul>
        </Ledger>
      )}
      {hints.length > 0 && (
        <Ledger title="Hints" count={hints.length} open={open}>
          <ul class="rows">
            {hints.map((text, index) => (
              <li key={index} class="row">
                <span class="row-name">{text}</span>
              </li>
            ))}
          </ul>
        </Ledger>
      )}
    </aside>
  );
}

interface RowProps {
  readonly answer: DrillAnswer;
  /** The trainee has said what it is, or gone on: its band may be seen. */
  readonly judged: boolean;
}

function Row({ answer: { reading, typed, twin, observation }, judged }: RowProps): JSX.Element {
  const bands = observation?.bands ?? [];
  const words = bandWords(reading, bands);
  const isNormal = reading.normal !== 'any' && bands.every((band) => reading.normal.includes(band));
  const verdict =
    reading.normal === 'any' || bands.length === 0 ? '' : isNormal ? ' word-normal' : ' word-off';
  return (
    <li class="row">
      <span class="row-name">{asShown(reading.is)}</span>
      <span class="row-value">
        <Figure text={typed} size="row" />
        {judged && words !== '' && words !== typed && <span class={`row-band${verdict}`}>{words}</span>}
      </span>
      <span class="row-more">
        {[
          ...(judged && isNormal && bands.length > 0 ? ['as it should be'] : []),
          ...(twin === null ? [] : [`known-good board: ${twin}`]),
        ].join(' · ')}
      </span>
    </li>
  );
}
