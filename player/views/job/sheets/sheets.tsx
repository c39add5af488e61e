import type { ComponentType, JSX } from 'preact';
import type { DialogName } from '../../../models/dialog-name.ts';
import { BoardSheet } from './board-sheet.tsx';
import { ChangeSettingSheet } from './change-setting-sheet.tsx';
import { CloseSheet } from './close-sheet.tsx';
import { GoSheet } from './go-sheet.tsx';
import { InstrumentsSheet } from './instruments-sheet.tsx';
import { MoreSheet } from './more-sheet.tsx';
import { RetakeSheet } from './retake-sheet.tsx';
import { RunsSheet } from './runs-sheet.tsx';
import { SettingsSheet } from './settings-sheet.tsx';
import type { SheetProps } from './sheet-props.ts';
import { SuspectsSheet } from './suspects-sheet.tsx';
import { TwinSheet } from './twin-sheet.tsx';
import { UndoneSheet } from './undone-sheet.tsx';
import {
  CannotReadSheet,
  DeclineSheet,
  NoteSheet,
  OverrideSheet,
  ReopenSheet,
  StrikeSheet,
  TodoSheet,
} from './words-sheets.tsx';

const sheets: { readonly [Name in DialogName['dialog']]: ComponentType<SheetProps<Name>> } = {
  more: MoreSheet,
  suspects: SuspectsSheet,
  note: NoteSheet,
  todo: TodoSheet,
  'cannot-read': CannotReadSheet,
  go: GoSheet,
  close: CloseSheet,
  reopen: ReopenSheet,
  decline: DeclineSheet,
  override: OverrideSheet,
  runs: RunsSheet,
  undone: UndoneSheet,
  settings: SettingsSheet,
  board: BoardSheet,
  instruments: InstrumentsSheet,
  twin: TwinSheet,
  'change-setting': ChangeSettingSheet,
  retake: RetakeSheet,
  strike: StrikeSheet,
};

type SheetsProps = Omit<SheetProps<DialogName['dialog']>, 'sheet' | 'onClose'>;

/** The sheet that is open over the job, if one is. */
export function Sheets(props: SheetsProps): JSX.Element | null {
  const sheet = props.job.dialog.value;
  if (sheet === null) return null;
  const Sheet = sheets[sheet.dialog] as ComponentType<SheetProps<DialogName['dialog']>>;
  const close = () => {
    // A sheet that opened another one must not close that one with itself.
    if (props.job.dialog.value === sheet) props.job.dialog.value = null;
  };
  return <Sheet key={JSON.stringify(sheet)} {...props} sheet={sheet} onClose={close} />;
}
