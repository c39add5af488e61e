import type { JSX } from 'preact';
import { latest } from '../../../../engine/run/index.ts';
import { lastLook } from '../../../models/last-look.ts';
import { openWayWords } from '../../../models/open-way-words.ts';
import { Action } from '../../../parts/action.tsx';
import { useKeys } from '../../../parts/use-keys.ts';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** The readings leave more than one way open: measure again, or go on as if. */
export function TooCloseStep({ job, session, question }: StepProps<'too-close'>): JSX.Element {
  const { section, ways } = question;
  const { readings, sections } = session.loaded;
  const open = section.readings.filter((id) => (latest(session, id)?.bands.length ?? 0) !== 1);
  const names = open.map((id) => readings.get(id)?.is ?? id);
  const measureAgain = () => {
    const reading = open.find((id) => session.position.taken.has(id));
    const of = reading === undefined ? -1 : lastLook(session, reading);
    if (reading === undefined || of < 0) void job.answer({ say: 'back' });
    else job.dialog.value = { dialog: 'retake', reading, of };
  };
  const assume = (target: string) => () => void job.answer({ say: 'assume', target });
  useKeys(
    Object.fromEntries(ways.slice(0, 9).map(({ target }, index) => [String(index + 1), assume(target)])),
  );
  return (
    <>
      <StepBody>
        <StepHead session={session} title="Too close to call" why={false} />
        <p>
          {names.length > 0 ? `${names.join(' and ')} can lie in more than one band. ` : ''}A finer range, a
          better contact or the average of five readings would settle it.
        </p>
        <ul class="ways">
          {ways.map((way, index) => (
            <li key={way.target}>
              <Action keys={String(index + 1)} onAct={assume(way.target)}>
                Go on as if {openWayWords(session, way)}
              </Action>
              <span class="way-to">→ {sections.get(way.target)?.title ?? way.target}</span>
            </li>
          ))}
        </ul>
      </StepBody>
      <Desk job={job}>
        <MainAction hint="Or choose a way above; the record says that it was assumed." onAct={measureAgain}>
          Measure again
        </MainAction>
      </Desk>
    </>
  );
}
