import type { JSX } from 'preact';
import type { Preferences } from '../../models/preferences.ts';
import { Choice } from '../../parts/choice.tsx';
import { Dialog } from '../../parts/dialog.tsx';

interface LookSheetProps {
  readonly preferences: Preferences;
  readonly onClose: () => void;
}

/** Light, dark, and the size of the letters. */
export function LookSheet({ preferences, onClose }: LookSheetProps): JSX.Element {
  return (
    <Dialog title="Look" onClose={onClose}>
      <Choice
        label="Light"
        value={preferences.light.value}
        onChoose={preferences.setLight}
        choices={[
          { value: 'system', text: 'As the system' },
          { value: 'light', text: 'Light', means: 'for a bright bench' },
          { value: 'dark', text: 'Dark', means: "for the scope's corner" },
        ]}
      />
      <Choice
        label="Letters"
        value={preferences.type.value}
        onChoose={preferences.setType}
        choices={[
          { value: 'normal', text: 'Normal' },
          { value: 'big', text: 'Big', means: 'to read from a step back' },
        ]}
      />
    </Dialog>
  );
}
