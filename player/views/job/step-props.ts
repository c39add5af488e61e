import type { Question, Session } from '../../../engine/run/index.ts';
import type { App } from '../../models/app.ts';
import type { OpenJob } from '../../models/open-job.ts';

/** What a view of one kind of question gets. */
export interface StepProps<Ask extends Question['ask']> {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
  readonly question: Extract<Question, { readonly ask: Ask }>;
}
