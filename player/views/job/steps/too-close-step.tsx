import type { JSX } from 'preact';
import { latest, nameHere } from '../../../../engine/run/index.ts';
import { lastLook } from '../../../models/last-look.ts';
import { listed } from '../../../models/listed.ts';
import { openWayWords } from '../../../models/open-way-words.ts';
import { unsettledWords } from '../../../models/unsettled-words.ts';
import { Action } from '../../../parts/action.tsx';
import { asShown } from '../../../parts/as-shown.ts';
import { useKeys } from '../../../parts/use-keys.ts';
import { Desk } from '../desk.tsx';
import { MainAction } from '../main-action.tsx';
import { StepBody, StepHead } from '../step.tsx';
import type { StepProps } from '../step-props.ts';

/** The readings leave more than one way open: measure again, or go on as if. */
export function TooCloseStep({ job, session, question }: StepProps<'too-close'>): JSX.Element {
  const { section, ways, unsettled } = question;
  const { sections } = session.loaded;
  const open = section.readings.filter((id) => (latest(session, id)?.bands.length ?? 0) !== 1);
  const unread = open.filter((id) => !unsettled.some(({ reading }) => reading.id === id));
  const settings = unsettled
    .flatMap(({ by }) => by)
    .flatMap((settler) => (settler.kind === 'setting' ? [settler.setting] : []));
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
        {unsettled.map((one) => {
          const { what, settle } = unsettledWords(session, one);
          return (
            <div key={one.reading.id} class="unsettled">
              <p>
                <strong>{one.reading.is}</strong>: {asShown(what)}.
              </p>
              <p>{asShown(settle)}.</p>
            </div>
          );
        })}
        {unread.length > 0 && (
          <p>
            {listed(unread.map((id) => nameHere(session, id)))} {unread.length > 1 ? 'are' : 'is'} not known,
            and the way depends on it.
          </p>
        )}
        {[...new Set(settings)].map((setting) => (
          <Action key={setting} onAct={() => (job.dialog.value = { dialog: 'change-setting', setting })}>
            Say what it is: {session.loaded.settings.get(setting)?.is ?? setting}
          </Action>
        ))}
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
