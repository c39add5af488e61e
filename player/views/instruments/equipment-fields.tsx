import type { JSX } from 'preact';
import { printInstrument } from '../../../engine/doubt/index.ts';
import type { DecisionRule } from '../../../engine/model/instrument.ts';
import type { EquipmentForm } from '../../models/equipment-form.ts';
import { asShown } from '../../parts/as-shown.ts';
import { Choice } from '../../parts/choice.tsx';
import { InstrumentField } from './instrument-field.tsx';
import { InstrumentUnderstood } from './instrument-understood.tsx';

interface EquipmentFieldsProps {
  readonly form: EquipmentForm;
  /** What readings are taken with. */
  readonly tools: readonly string[];
}

/** What is at this bench: instruments, tools that are not there, and how a value near a limit is taken. */
export function EquipmentFields({ form, tools }: EquipmentFieldsProps): JSX.Element {
  const { instruments, lacking, rule } = form.equipment.value;
  const all = [...new Set([...tools, ...lacking])];
  return (
    <div class="sheet-form">
      <InstrumentField form={form} />
      {instruments.length > 0 && (
        <ul class="rows" aria-label="Instruments of this bench">
          {instruments.map((instrument) => (
            <li key={instrument.name} class="instrument">
              <span>
                <InstrumentUnderstood instrument={instrument} />
                <code class="instrument-line">{asShown(printInstrument(instrument))}</code>
              </span>
              <span class="instrument-acts">
                <button type="button" class="action action-quiet" onClick={() => form.edit(instrument.name)}>
                  Change<span class="unseen"> {instrument.name}</span>
                </button>
                <button
                  type="button"
                  class="action action-quiet"
                  onClick={() => form.remove(instrument.name)}
                >
                  Take out<span class="unseen"> {instrument.name}</span>
                </button>
              </span>
            </li>
          ))}
        </ul>
      )}
      <Choice
        label="A reading near a limit"
        value={rule}
        onChoose={(next: DecisionRule) => form.rule(next)}
        choices={[
          {
            value: 'guarded',
            text: 'Counts as all that it can be',
            means:
              'guarded: 4.76 V on a meter that may be 0.05 V off is good or low, and you are asked which to follow',
          },
          {
            value: 'simple',
            text: 'Counts as what was shown',
            means: 'simple: 4.76 V is good where good begins at 4.75 V, whatever the meter',
          },
        ]}
      />
      {all.length > 0 && (
        <fieldset class="choice choice-many">
          <legend>Not at this bench</legend>
          {all.map((tool) => (
            <label key={tool}>
              <input
                type="checkbox"
                checked={lacking.includes(tool)}
                onChange={(event) => form.lack(tool, event.currentTarget.checked)}
              />
              <span>{tool}</span>
            </label>
          ))}
        </fieldset>
      )}
    </div>
  );
}
