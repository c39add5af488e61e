import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Ports } from '../../ports/ports.ts';
import { type Loading, loading } from '../loading.ts';
import { fileNameOf } from '../save-job.ts';
import { type DebriefShown, debriefShown } from './debrief-shown.ts';
import { dropDrill, keptDrill } from './kept-drill.ts';
import { loadDrill } from './load-drill.ts';
import { keepOutcome } from './progress.ts';

/** What a drill was worth, once it is over. */
export interface DebriefPage {
  readonly debrief: ReadonlySignal<Loading<DebriefShown>>;
  /** The trainee's name, for the result. */
  readonly name: Signal<string>;
  load(): Promise<void>;
  saveResult(): void;
  print(): void;
  /** Puts the drill away, so that its board lies there as at first. */
  again(): void;
}

const nameSetting = 'practice-name';

export function createDebriefPage(ports: Ports, code: string): DebriefPage {
  const { practice, settings, browser, files, clock } = ports;
  const debrief = signal<Loading<DebriefShown>>(loading);
  const name = signal(settings.read(nameSetting) ?? '');
  return {
    debrief,
    name,
    async load() {
      if (keptDrill(practice, code) === null) {
        debrief.value = { state: 'failed', why: 'This device keeps no drill with this code' };
        return;
      }
      const loaded = await loadDrill(ports, code);
      if (!loaded.ok) {
        debrief.value = { state: 'failed', why: loaded.why };
        return;
      }
      if (loaded.value.state === 'running') {
        debrief.value = { state: 'failed', why: 'The board is not done yet: the fault is still to be named' };
        return;
      }
      const shown = debriefShown(loaded.value);
      keepOutcome(practice, code, { ...shown.outcome, format: 1, at: clock.now() });
      debrief.value = { state: 'ready', value: shown };
    },
    saveResult() {
      if (debrief.value.state !== 'ready') return;
      settings.write(nameSetting, name.value.trim());
      const at = clock.now();
      files.save(
        resultFileName(name.value, at.slice(0, 10)),
        'application/json',
        JSON.stringify(debrief.value.value.result(name.value.trim(), at), null, 1),
      );
    },
    print: () => browser.print(),
    again: () => dropDrill(practice, code),
  };
}

const resultFileName = (name: string, day: string): string =>
  fileNameOf(name.trim() || 'trainee', day, 'drill.json');
