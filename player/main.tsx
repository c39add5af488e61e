import { effect } from '@preact/signals';
import { render } from 'preact';
import { createApp } from './models/app.ts';
import { contentKey } from './models/content-key.ts';
import { broadcastWindows } from './ports/broadcast-windows.ts';
import { browserFiles } from './ports/browser-files.ts';
import { fetchedTrees } from './ports/fetched-trees.ts';
import { idbJobStore } from './ports/idb-job-store.ts';
import { localPracticeShelf } from './ports/local-practice-shelf.ts';
import { localSettings } from './ports/local-settings.ts';
import { realBrowser } from './ports/real-browser.ts';
import { systemClock } from './ports/system-clock.ts';
import { workerRanker } from './ports/worker-ranker.ts';
import './styles/index.css';
import { AppView } from './views/app.tsx';

const app = createApp({
  store: idbJobStore({ contentKey }),
  trees: fetchedTrees,
  clock: systemClock,
  files: browserFiles,
  windows: broadcastWindows(),
  settings: localSettings,
  browser: realBrowser,
  practice: localPracticeShelf,
  ranker: workerRanker,
});

effect(() => {
  const { light, type } = app.preferences;
  Object.assign(document.documentElement.dataset, { theme: light.value, type: type.value });
});

const root = document.getElementById('app');
if (root !== null) render(<AppView app={app} />, root);
