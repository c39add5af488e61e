import { describe, expect, test } from 'vitest';
import { createActor, setup } from 'xstate';
import { getShortestPaths } from 'xstate/graph';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { MachineEvent } from '../../engine/model/machine.ts';
import { guards } from '../../engine/run/guards.ts';
import { sectionAt } from '../../engine/run/section-at.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';

/** One `checked` event for each line of a check that can be met by bands: the first band of each name that
 *  the line asks for, the last band of the others. */
function eventsOf(tree: CompiledTree): readonly MachineEvent[] {
  const last = Object.fromEntries([
    ...tree.readings.map((reading) => [reading.id, bandsOf(reading).at(-1) ?? '']),
    ...tree.settings.map((setting) => [
      setting.id,
      setting.kind === 'options' ? (setting.options.at(-1)?.name ?? '') : '',
    ]),
  ]);
  const checked = tree.sections.flatMap((section) =>
    section.kind !== 'check'
      ? []
      : section.readings
          .map((id) => tree.readings.find((reading) => reading.id === id))
          .flatMap((reading) => (reading ? bandsOf(reading).map((band) => ({ [reading.id]: band })) : [])),
  );
  const options = tree.settings.flatMap((setting) =>
    setting.kind === 'options' ? setting.options.map(({ name }) => ({ [setting.id]: name })) : [],
  );
  const normal = Object.fromEntries(
    tree.readings.map(({ id, normal: bands }) => [id, bands === 'any' ? last[id] : bands[0]]),
  );
  const lines = tree.sections.flatMap((section) =>
    section.kind === 'check'
      ? section.outcomes.flatMap(({ condition }) =>
          condition.kind === 'bands'
            ? [Object.fromEntries(Object.entries(condition.bands).map(([name, bands]) => [name, bands[0]]))]
            : [],
        )
      : [],
  );
  const bands = [
    last,
    normal,
    ...[...checked, ...options, ...lines].flatMap((some) => [
      { ...last, ...some },
      { ...normal, ...some },
    ]),
  ];
  return [
    ...bands.map((some) => ({ type: 'checked', bands: some }) as MachineEvent),
    { type: 'unread' },
    { type: 'done' },
    { type: 'proved' },
    { type: 'failed' },
  ];
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
    const paths = getShortestPaths(machine, { events: () => [...eventsOf(compiled)] as never[] });
    const reached = new Set(paths.map(({ state }) => JSON.stringify(state.value)));
    const sections = new Set([...reached].map((value) => sectionAt(JSON.parse(value)).section));
    expect(compiled.sections.map(({ id }) => id).filter((id) => !sections.has(id))).toEqual([]);
    expect(reached.has('"mended"')).toBe(true);
    const faults = compiled.sections.filter(({ kind }) => kind === 'fault');
    expect(faults.filter(({ id }) => !reached.has(`{"s-${id}":"proof-1"}`)).map(({ id }) => id)).toEqual([]);
  });
});
