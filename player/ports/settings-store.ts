/** Small settings of this browser, as text by name. */
export interface SettingsStore {
  read(name: string): string | null;
  write(name: string, value: string): void;
}
