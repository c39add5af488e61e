import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import { parseInstrument, printInstrument } from '../../engine/doubt/index.ts';
import type { DecisionRule, Equipment } from '../../engine/model/instrument.ts';
import type { SettingsStore } from '../ports/settings-store.ts';
import { keepEquipment, keptEquipment } from './kept-equipment.ts';

/** What is at this bench, as it is written down: every change is kept at once. */
export interface EquipmentForm {
  readonly equipment: ReadonlySignal<Equipment>;
  /** The line of an instrument that is being written. */
  readonly typed: Signal<string>;
  /** Takes the typed line in, in the place of an instrument of the same name. False: it is not understood. */
  add(): boolean;
  /** Puts an instrument's line back in the field. */
  edit(name: string): void;
  remove(name: string): void;
  /** A tool that is there, or not. */
  lack(tool: string, lacking: boolean): void;
  rule(rule: DecisionRule): void;
}

export function createEquipmentForm(store: SettingsStore): EquipmentForm {
  const equipment = signal(keptEquipment(store));
  const typed = signal('');
  const change = (part: Partial<Equipment>) => {
    equipment.value = { ...equipment.value, ...part };
    keepEquipment(store, equipment.value);
  };
  return {
    equipment,
    typed,
    add() {
      const read = parseInstrument(typed.value);
      if (!read.ok) return false;
      const { instruments } = equipment.value;
      const isThere = instruments.some(({ name }) => name === read.value.name);
      change({
        instruments: isThere
          ? instruments.map((one) => (one.name === read.value.name ? read.value : one))
          : [...instruments, read.value],
      });
      typed.value = '';
      return true;
    },
    edit(name) {
      const found = equipment.value.instruments.find((one) => one.name === name);
      if (found !== undefined) typed.value = printInstrument(found);
    },
    remove(name) {
      change({ instruments: equipment.value.instruments.filter((one) => one.name !== name) });
    },
    lack(tool, lacking) {
      const others = equipment.value.lacking.filter((one) => one !== tool);
      change({ lacking: lacking ? [...others, tool] : others });
    },
    rule: (rule) => change({ rule }),
  };
}
