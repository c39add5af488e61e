import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Fault } from '../../../engine/model/fault.ts';
import type { Drill } from '../../../engine/practice/drill.ts';
import {
  askTwin,
  checksIn,
  type DrillCheck,
  giveUp,
  hint,
  ledTo,
  measure,
  nameFault,
  nextOf,
  type ProofReading,
  predict,
} from '../../../engine/practice/index.ts';
import type { Ports } from '../../ports/ports.ts';
import { type Loading, loading } from '../loading.ts';
import { dropDrill, keepDrill } from './kept-drill.ts';
import { loadDrill } from './load-drill.ts';

/** What is in front of the trainee. */
export type DrillPlace =
  | { readonly at: 'board' }
  /** A check is picked and not taken. */
  | { readonly at: 'check'; readonly reading: string }
  /** The instrument shows something. `said`: the band that the trainee takes it for; null before that. */
  | { readonly at: 'answer'; readonly reading: string; readonly said: string | null }
  | { readonly at: 'names' }
  /** A fault is named, its remedy not yet done. */
  | { readonly at: 'remedy'; readonly fault: string }
  | {
      readonly at: 'proof';
      readonly fault: string;
      readonly right: boolean;
      readonly proof: readonly ProofReading[];
      /** So many of them have been read. */
      readonly shown: number;
    };

type Sheet =
  | { readonly sheet: 'hint'; readonly text: string | null; readonly cost: number }
  | { readonly sheet: 'give up' };

/** One drill while it is on the screen. */
export interface DrillRun {
  readonly code: string;
  readonly drill: ReadonlySignal<Loading<Drill>>;
  readonly checks: ReadonlySignal<readonly DrillCheck[]>;
  /** The reading that the tree asks now; null where the trainee goes free, or the tree has no more. */
  readonly next: ReadonlySignal<string | null>;
  /** The fault that the tree has led to; null before that, and where the trainee goes free. */
  readonly led: ReadonlySignal<Fault | null>;
  readonly place: Signal<DrillPlace>;
  /** What narrows the list of checks, or of faults. */
  readonly typed: Signal<string>;
  /** What the trainee says before measuring. */
  readonly saying: Signal<string | null>;
  readonly sheet: Signal<Sheet | null>;
  /** The browser keeps the drill when the page is closed. */
  readonly kept: ReadonlySignal<boolean>;
  load(): Promise<void>;
  go(place: DrillPlace): void;
  /** `heeded`: the warnings before it were acknowledged. */
  measure(reading: string, heeded: boolean): void;
  /** The same reading on a known-good board. */
  readTwin(reading: string): void;
  askForHint(): void;
  takeHint(): void;
  mend(fault: string): void;
  giveUp(): void;
  /** The same board from the beginning. */
  again(): Promise<void>;
}

export function createDrillRun(ports: Ports, code: string): DrillRun {
  const drill = signal<Loading<Drill>>(loading);
  const place = signal<DrillPlace>({ at: 'board' });
  const typed = signal('');
  const saying = signal<string | null>(null);
  const sheet = signal<Sheet | null>(null);
  const kept = signal(true);
  const now = () => (drill.value.state === 'ready' ? drill.value.value : null);

  const step = (next: Drill) => {
    drill.value = { state: 'ready', value: next };
    kept.value = keepDrill(ports.practice, code, next, ports.clock.now());
  };
  const go = (next: DrillPlace) =>
    batch(() => {
      place.value = next;
      typed.value = '';
      saying.value = null;
    });
  const load = async () => {
    const loaded = await loadDrill(ports, code);
    drill.value = loaded.ok ? { state: 'ready', value: loaded.value } : { state: 'failed', why: loaded.why };
  };

  return {
    code,
    drill,
    checks: computed(() => {
      const at = now();
      return at === null ? [] : checksIn(at);
    }),
    next: computed(() => {
      const at = now();
      return at === null || at.plan.manner === 'free' ? null : nextOf(at);
    }),
    led: computed(() => {
      const at = now();
      return at === null || at.plan.manner === 'free' ? null : ledTo(at);
    }),
    place,
    typed,
    saying,
    sheet,
    kept,
    load,
    go,
    measure(reading, heeded) {
      const at = now();
      if (at === null) return;
      const said = saying.value;
      const before = said === null ? at : predict(at, reading, said);
      batch(() => {
        step(measure(before, reading, { heeded }));
        go({ at: 'answer', reading, said });
      });
    },
    readTwin(reading) {
      const at = now();
      if (at !== null) step(askTwin(at, reading));
    },
    askForHint() {
      const at = now();
      if (at !== null) sheet.value = { sheet: 'hint', text: null, cost: hint(at).cost };
    },
    takeHint() {
      const at = now();
      if (at === null) return;
      const given = hint(at);
      batch(() => {
        step(given.drill);
        sheet.value = { sheet: 'hint', text: given.text, cost: given.cost };
      });
    },
    mend(fault) {
      const at = now();
      if (at === null) return;
      const { drill: next, right, proof } = nameFault(at, fault);
      batch(() => {
        step(next);
        go({ at: 'proof', fault, right, proof, shown: 0 });
      });
    },
    giveUp() {
      const at = now();
      if (at === null) return;
      batch(() => {
        step(giveUp(at));
        sheet.value = null;
      });
    },
    async again() {
      dropDrill(ports.practice, code);
      go({ at: 'board' });
      await load();
    },
  };
}
