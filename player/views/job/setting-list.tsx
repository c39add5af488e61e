import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import { settingWords } from '../../models/setting-words.ts';
import { asShown } from '../../parts/as-shown.ts';

interface SettingListProps {
  readonly session: Session;
  /** The one that is asked for now. */
  readonly now?: string;
  readonly onChange?: (setting: string) => void;
}

/** Every setting of the tree and its value on this board. */
export function SettingList({ session, now, onChange }: SettingListProps): JSX.Element {
  return (
    <dl class="facts">
      {session.loaded.tree.settings.map((setting) => {
        const value = settingWords(session, setting.id);
        return (
          <div key={setting.id} class={setting.id === now ? 'fact-now' : ''}>
            <dt>{setting.is}</dt>
            <dd>
              {setting.id === now ? 'now' : asShown(value ?? 'to come')}
              {onChange !== undefined && value !== null && (
                <button type="button" class="action action-quiet" onClick={() => onChange(setting.id)}>
                  Change<span class="unseen"> {setting.is}</span>
                </button>
              )}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
