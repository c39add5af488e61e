import { useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { App } from '../../models/app.ts';
import { createEquipmentForm } from '../../models/equipment-form.ts';
import { Shell } from '../shell/shell.tsx';
import { useKept } from '../use-kept.ts';
import { EquipmentFields } from './equipment-fields.tsx';

/** What is at this bench. */
export function InstrumentsScreen({ app }: { readonly app: App }): JSX.Element {
  const form = useKept(() => createEquipmentForm(app.ports.settings));
  const tools = useSignal<readonly string[]>([]);
  useEffect(() => {
    void app.ports.trees.list().then((list) => {
      if (list.ok) tools.value = [...new Set(list.value.flatMap((tree) => tree.tools))].sort();
    });
  }, []);
  return (
    <Shell app={app} title="Instruments">
      <main class="page">
        <h1>What is at this bench?</h1>
        <p class="hint">
          How far off an instrument can be decides whether a reading near a limit is one thing or the other.
          It is kept on this device and noted in every new job.
        </p>
        <EquipmentFields form={form} tools={tools.value} />
        <a class="action action-quiet back-link" href="#/">
          Back to the bench
        </a>
      </main>
    </Shell>
  );
}
