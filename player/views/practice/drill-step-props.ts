import type { Drill } from '../../../engine/practice/drill.ts';
import type { App } from '../../models/app.ts';
import type { DrillPlace, DrillRun } from '../../models/practice/drill-run.ts';

export interface DrillStepProps<At extends DrillPlace['at']> {
  readonly app: App;
  readonly run: DrillRun;
  readonly drill: Drill;
  readonly place: Extract<DrillPlace, { readonly at: At }>;
}
