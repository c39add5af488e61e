import type { JSX } from 'preact';
import { Dialog } from '../../../parts/dialog.tsx';
import { ProposalCard } from '../suspects/proposal-card.tsx';
import { SuspectsPanel } from '../suspects/suspects-panel.tsx';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

/** The suspects, where no room is for them beside the step. */
export function SuspectsSheet({ job, onClose }: SheetProps<'suspects'>): JSX.Element {
  return (
    <Dialog title="Suspects" onClose={onClose}>
      <SheetNotice job={job} />
      <ProposalCard job={job} />
      <SuspectsPanel job={job} />
    </Dialog>
  );
}
