import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Setting } from '../../../engine/model/setting.ts';
import type { Session } from '../../../engine/run/index.ts';
import type { OpenJob } from '../../models/open-job.ts';
import type { SettingHow } from '../../models/setting-value.ts';
import { usualWords } from '../../models/setting-words.ts';
import { understandingOfSetting } from '../../models/understanding-of-setting.ts';
import { Action } from '../../parts/action.tsx';
import { asShown } from '../../parts/as-shown.ts';
import { OptionsFace } from '../../parts/options-face.tsx';
import { UnderstandingLine } from '../../parts/understanding-line.tsx';
import { useKeys } from '../../parts/use-keys.ts';
import { AnswerRow } from './answer-row.tsx';
import { useFieldFocus } from './use-field-focus.ts';

interface SettingAnswerProps {
  readonly job: OpenJob;
  readonly session: Session;
  readonly setting: Setting;
  readonly how: SettingHow;
  /** What stands in the field. */
  readonly typed: Signal<string>;
  /** In a sheet the keys of the page do not act. */
  readonly inSheet?: boolean;
  readonly onDone: () => void;
}

/** The field for one setting, with how it is understood. */
export function SettingAnswer(props: SettingAnswerProps): JSX.Element {
  const { job, session, setting, how, typed: text, inSheet = false, onDone } = props;
  const id = useId();
  const field = useFieldFocus(job);
  const typed = text.value;
  const usual = usualWords(setting);
  const understanding = understandingOfSetting(session, setting, typed, how);
  const valid = understanding.state === 'understood';
  const type = (next: string) => {
    text.value = next;
    field.current?.focus();
  };
  const commit = async () => {
    if (!(await job.answer({ say: 'setting', setting: setting.id, typed, how }))) return;
    text.value = '';
    onDone();
  };
  const options = setting.kind === 'options' ? setting.options : [];
  useKeys({
    ...Object.fromEntries(
      options.slice(0, 9).map(({ name }, index) => [String(index + 1), () => type(name)]),
    ),
    ...(usual !== null && { '=': () => type(usual) }),
  });
  return (
    <>
      <h2 class="desk-title" tabIndex={-1}>
        {setting.is}
      </h2>
      {options.length > 0 && (
        <OptionsFace
          options={options}
          normal="any"
          chosen={valid ? understanding.bands : []}
          digits={!inSheet}
          onChoose={type}
        />
      )}
      <AnswerRow
        id={`${id}-field`}
        label={setting.is}
        typed={typed}
        unit={setting.kind === 'quantity' ? setting.unit : null}
        understanding={understanding}
        describedBy={`${id}-line`}
        field={field}
        first={inSheet}
        onType={(next) => (text.value = next)}
        onCommit={() => void commit()}
      />
      <div id={`${id}-line`}>
        {usual !== null && typed === '' ? (
          <p class="known">
            <span>
              Usually <strong>{asShown(usual)}</strong>
            </span>
            <Action {...(!inSheet && { keys: '=' })} onAct={() => type(usual)}>
              Put it in the field
            </Action>
          </p>
        ) : (
          <UnderstandingLine understanding={understanding} onOffer={type} />
        )}
      </div>
    </>
  );
}
