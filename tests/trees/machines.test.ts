import { describe, expect, test } from 'vitest';
import { createActor, setup } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { MachineEvent } from '../../engine/model/machine.ts';
import { guards } from '../../engine/run/guards.ts';
import { sectionAt } from '../../engine/run/section-at.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

type Bands = Readonly<Record<string, string | undefined>>;

const steps: readonly MachineEvent[] = [
  { type: 'unread' },
  { type: 'done' },
  { type: 'proved' },
  { type: 'failed' },
];

/** What can happen in each section: in a check one `checked` event for each band of what it reads, for each option of each setting,
 *  and for each line that can be met by bands; everything else in its last band, and in its normal one. */
function eventsOf(tree: CompiledTree): ReadonlyMap<string, readonly MachineEvent[]> {
  const readings = new Map(tree.readings.map((reading) => [reading.id, reading]));
  const options = tree.settings.flatMap((setting) =>
    setting.kind === 'options' ? setting.options.map(({ name }): Bands => ({ [setting.id]: name })) : [],
  );
  const last: Bands = Object.fromEntries([
    ...tree.readings.map((reading) => [reading.id, bandsOf(reading).at(-1) ?? '']),
    ...tree.settings.map((setting) => [
      setting.id,
      setting.kind === 'options' ? (setting.options.at(-1)?.name ?? '') : '',
    ]),
  ]);
  const normal: Bands = Object.fromEntries(
    tree.readings.map(({ id, normal: bands }) => [id, bands === 'any' ? last[id] : bands[0]]),
  );
  return new Map(
    tree.sections.map((section) => {
      if (section.kind !== 'check') return [section.id, steps];
      const read = section.readings.flatMap((id) => {
        const reading = readings.get(id);
        return reading === undefined ? [] : bandsOf(reading).map((band): Bands => ({ [id]: band }));
      });
      const lines = section.outcomes.flatMap(({ condition }): Bands[] =>
        condition.kind === 'bands'
          ? [Object.fromEntries(Object.entries(condition.bands).map(([name, bands]) => [name, bands[0]]))]
          : [],
      );
      const checked = [{}, ...read, ...options, ...lines].flatMap((some) =>
        [last, normal].map((others) => ({ type: 'checked', bands: { ...others, ...some } }) as MachineEvent),
      );
      return [section.id, [...checked, ...steps]];
    }),
  );
}

describe.each(shippedTrees)("the machine of $id, in XState's own hands", ({ tree }) => {
  const compiled = tree as CompiledTree;
  const json = JSON.parse(JSON.stringify(compiled.machine));
  const machine = setup({ types: { events: {} as MachineEvent }, guards }).createMachine(json);

  test('runs as an actor from plain JSON', () => {
    const actor = createActor(machine).start();
    actor.send({ type: 'go', section: compiled.sections.at(-1)?.id ?? '' });
    expect(sectionAt(actor.getSnapshot().value).section).toBe(compiled.sections.at(-1)?.id);
    expect(actor.getSnapshot().status).toBe('active');
  });

  test('reaches every section, every proof and the mended board on its shortest paths', () => {
    const events = eventsOf(compiled);
    const paths = getShortestPaths(machine, {
      events: ({ value }) => [...(events.get(sectionAt(value).section) ?? steps)] as never[],
    });
    const reached = new Set(paths.map(({ state }) => JSON.stringify(state.value)));
    const sections = new Set([...reached].map((value) => sectionAt(JSON.parse(value)).section));
    expect(compiled.sections.map(({ id }) => id).filter((id) => !sections.has(id))).toEqual([]);
    expect(reached.has('"mended"')).toBe(true);
    const faults = compiled.sections.filter(({ kind }) => kind === 'fault');
    expect(faults.filter(({ id }) => !reached.has(`{"s-${id}":"proof-1"}`)).map(({ id }) => id)).toEqual([]);
  });
});
