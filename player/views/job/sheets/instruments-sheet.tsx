import type { JSX } from 'preact';
import { createEquipmentForm } from '../../../models/equipment-form.ts';
import { equipAnswer, sameEquipment } from '../../../models/kept-equipment.ts';
import { Action } from '../../../parts/action.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { EquipmentFields } from '../../instruments/equipment-fields.tsx';
import { useKept } from '../../use-kept.ts';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

/** What is at this bench, and whether the job goes by it. */
export function InstrumentsSheet({ app, job, session, onClose }: SheetProps<'instruments'>): JSX.Element {
  const form = useKept(() => createEquipmentForm(app.ports.settings));
  const tools = [...new Set(session.loaded.tree.readings.flatMap((reading) => reading.with))];
  const same = sameEquipment(form.equipment.value, session.equipment);
  const use = async () => {
    if (!(await job.answer(equipAnswer(form.equipment.value)))) return;
    job.otherBench.value = false;
    onClose();
  };
  return (
    <Dialog title="Instruments" onClose={onClose}>
      <EquipmentFields form={form} tools={tools} />
      <SheetNotice job={job} />
      <p class="sheet-foot">
        <Action rank="main" disabled={same} onAct={() => void use()}>
          {same ? 'This job goes by these' : 'Go by these from now on'}
        </Action>
        <span class="hint">Readings that were taken before keep the doubt they were taken with.</span>
      </p>
    </Dialog>
  );
}
