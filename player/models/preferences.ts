import { type ReadonlySignal, signal } from '@preact/signals';
import type { SettingsStore } from '../ports/settings-store.ts';

const lights = ['system', 'light', 'dark'] as const;
type Light = (typeof lights)[number];
const types = ['normal', 'big'] as const;
type TypeSize = (typeof types)[number];

/** How the player looks on this bench. */
export interface Preferences {
  readonly light: ReadonlySignal<Light>;
  readonly type: ReadonlySignal<TypeSize>;
  setLight(light: Light): void;
  setType(type: TypeSize): void;
}

const known = <T extends string>(all: readonly T[], text: string | null, otherwise: T): T =>
  all.find((one) => one === text) ?? otherwise;

export function createPreferences(store: SettingsStore): Preferences {
  const light = signal(known(lights, store.read('light'), 'system'));
  const type = signal(known(types, store.read('type'), 'normal'));
  return {
    light,
    type,
    setLight(next) {
      light.value = next;
      store.write('light', next);
    },
    setType(next) {
      type.value = next;
      store.write('type', next);
    },
  };
}
