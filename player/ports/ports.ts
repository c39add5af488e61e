import type { Browser } from './browser.ts';
import type { Clock } from './clock.ts';
import type { Files } from './files.ts';
import type { JobStore } from './job-store.ts';
import type { PracticeShelf } from './practice-shelf.ts';
import type { Ranker } from './ranker.ts';
import type { SettingsStore } from './settings-store.ts';
import type { Trees } from './trees.ts';
import type { Windows } from './windows.ts';

/** Everything the models may touch of the world. */
export interface Ports {
  readonly store: JobStore;
  readonly trees: Trees;
  readonly clock: Clock;
  readonly files: Files;
  readonly windows: Windows;
  readonly settings: SettingsStore;
  readonly browser: Browser;
  readonly practice: PracticeShelf;
  readonly ranker: Ranker;
}
