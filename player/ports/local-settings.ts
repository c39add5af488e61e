import type { SettingsStore } from './settings-store.ts';

/** `localStorage`, or nothing where the browser refuses it: then settings last as long as the page. */
export const localSettings: SettingsStore = {
  read(name) {
    try {
      return localStorage.getItem(`deadboard.${name}`);
    } catch {
      return null;
    }
  },
  write(name, value) {
    try {
      localStorage.setItem(`deadboard.${name}`, value);
    } catch {
      // Private windows may refuse: the setting still holds for this page.
    }
  },
};
