import type { Question, Session } from '../../../../engine/run/index.ts';
import type { App } from '../../../models/app.ts';
import type { DialogName } from '../../../models/dialog-name.ts';
import type { OpenJob } from '../../../models/open-job.ts';

/** What a sheet over the job gets. */
export interface SheetProps<Name extends DialogName['dialog']> {
  readonly app: App;
  readonly job: OpenJob;
  readonly session: Session;
  readonly question: Question;
  readonly sheet: Extract<DialogName, { readonly dialog: Name }>;
  readonly onClose: () => void;
}
