import type { JSX } from 'preact';
import { Dialog } from '../../../parts/dialog.tsx';
import { SettingList } from '../setting-list.tsx';
import type { SheetProps } from './sheet-props.ts';

/** How the board is set, to look at and to change. */
export function SettingsSheet({ job, session, onClose }: SheetProps<'settings'>): JSX.Element {
  return (
    <Dialog title="How this board is set" onClose={onClose}>
      {session.loaded.tree.settings.length === 0 ? (
        <p>This tree judges nothing by settings.</p>
      ) : (
        <SettingList
          session={session}
          onChange={(setting) => (job.dialog.value = { dialog: 'change-setting', setting })}
        />
      )}
    </Dialog>
  );
}
