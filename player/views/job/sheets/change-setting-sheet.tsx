import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { settingWords } from '../../../models/setting-words.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { Choice } from '../../../parts/choice.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import { JumperTable } from '../jumper-table.tsx';
import { SettingAnswer } from '../setting-answer.tsx';
import { SheetNotice } from './sheet-notice.tsx';
import type { SheetProps } from './sheet-props.ts';

type How = 'altered' | 'corrected';

/** Another value for a setting: the board was changed, or the note was wrong. */
export function ChangeSettingSheet(props: SheetProps<'change-setting'>): JSX.Element | null {
  const { job, session, sheet, onClose } = props;
  const how = useSignal<How>('altered');
  const typed = useSignal('');
  const setting = session.loaded.settings.get(sheet.setting);
  if (setting === undefined) return null;
  return (
    <Dialog title={`Change: ${setting.is}`} onClose={onClose}>
      <div class="sheet-form">
        <p>
          Now: <strong>{asShown(settingWords(session, setting.id) ?? '')}</strong>
        </p>
        <Choice
          label="What happened"
          value={how.value}
          onChoose={(next: How) => (how.value = next)}
          choices={[
            {
              value: 'altered',
              text: 'The board was altered',
              means: 'readings judged by it are kept, but have to be taken again',
            },
            {
              value: 'corrected',
              text: 'The note was wrong',
              means: 'everything is judged again with the right value',
            },
          ]}
        />
        <JumperTable
          session={session}
          setting={setting}
          how={how.value}
          typed={typed.value}
          onType={(text) => (typed.value = text)}
        />
        <SettingAnswer
          job={job}
          session={session}
          setting={setting}
          how={how.value}
          typed={typed}
          inSheet
          onDone={onClose}
        />
        <SheetNotice job={job} />
      </div>
    </Dialog>
  );
}
