import type { ComponentType, JSX } from 'preact';
import { type Question, questionOf, type Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import type { OpenJob } from '../../models/open-job.ts';
import { useKeys } from '../../parts/use-keys.ts';
import { Shell } from '../shell/shell.tsx';
import { BenchOffers } from './bench-offers.tsx';
import { Beside } from './beside/beside.tsx';
import { JobHead } from './job-head.tsx';
import { JobNotice } from './job-notice.tsx';
import { Sheets } from './sheets/sheets.tsx';
import type { StepProps } from './step-props.ts';
import { AgainStep } from './steps/again-step.tsx';
import { stepViews } from './steps/index.ts';
import { Guidance } from './suspects/guidance.tsx';
import { walkKeys } from './walk-keys.ts';

interface WalkProps {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
}

/** The step that is due, with what is known beside it. */
export function Walk({ app, job, session }: WalkProps): JSX.Element {
  const question = questionOf(session);
  const board = session.entries.find((entry) => entry.kind === 'opened')?.board ?? '';
  useKeys(walkKeys(job, session, question));
  const Step = stepViews[question.ask] as ComponentType<StepProps<Question['ask']>>;
  return (
    <Shell app={app} title={board} head={<JobHead app={app} job={job} session={session} board={board} />}>
      <div class="bench">
        <main class={`walk${session.board?.pictures.length ? ' walk-pictured' : ''}`}>
          <JobNotice app={app} job={job} session={session} />
          <BenchOffers app={app} job={job} session={session} />
          <Guidance job={job} session={session} />
          {job.askAgain.value ? (
            <AgainStep job={job} session={session} />
          ) : (
            <Step key={stepKey(question)} app={app} job={job} session={session} question={question} />
          )}
        </main>
        <Beside app={app} job={job} session={session} />
      </div>
      <Sheets app={app} job={job} session={session} question={question} />
    </Shell>
  );
}

/** Changes when the screen moves on to another step, so that nothing of the last one stays. */
function stepKey(question: Question): string {
  switch (question.ask) {
    case 'setting':
      return `setting ${question.setting.id}`;
    case 'reading':
      return `reading ${question.section.id} ${question.purpose}`;
    case 'acknowledgement':
      return `acknowledgement ${question.words}`;
    case 'remedy':
      return `remedy ${question.section.id} ${question.fault.id}`;
    case 'arrange':
      return `arrange ${question.section.id} ${question.reading.id}`;
    case 'held':
      return `held ${question.section.id} ${question.reading?.id ?? ''}`;
    case 'task':
    case 'call':
    case 'hand-over':
    case 'stop':
    case 'too-close':
    case 'aside':
      return `${question.ask} ${question.section.id}`;
    default:
      return question.ask;
  }
}
