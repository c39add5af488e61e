import { describe, expect, test } from 'vitest';
import { initialTransition, setup, transition } from 'xstate';
import { emitMachine } from '../../../engine/emit/emit-machine.ts';
import type { Machine, MachineEvent } from '../../../engine/model/machine.ts';
import type { Section } from '../../../engine/model/section.ts';
import { linkedTree } from '../../helpers/small-tree.ts';

const facts = {
  readings: { v5: 'none low *good high', pg: 'low *high' },
  settings: { cpu: 'dual single' },
  faults: { x: '', y: '' },
};
const body = `
## 5 V at the pin

Read \`v5\`, \`pg\`.

- v5 is none, low and pg is low → [Either](#either)
- all good and cpu is dual → [Cards](#cards)
- cannot read → [Out](#out)
- otherwise → [Out](#out)

## Cards

Do: take them out.

Then → [5 V at the pin](#5-v-at-the-pin)

## Either

Fault \`x\`, \`y\`.

### \`x\`

Mend.

### \`y\`

Mend.

Prove \`v5\`.

## Out

Stop: elsewhere.
`;

function machineOf(): Machine {
  const [first, ...others] = linkedTree(facts, body).tree.sections.map(({ section }) => section);
  return emitMachine([first as Section, ...others]);
}

const blueprint = setup({
  types: { events: {} as MachineEvent },
  guards: {
    within: ({ event }, { bands }: { bands: Record<string, readonly string[]> }) =>
      event.type === 'checked' &&
      Object.keys(bands).every((name) => bands[name]?.includes(event.bands[name] ?? '')),
    names: ({ event }, { section }: { section: string }) => event.type === 'go' && event.section === section,
  },
});

/** Where the events lead, one state after the other. */
function walk(...events: MachineEvent[]): unknown[] {
  const json = JSON.parse(JSON.stringify(machineOf()));
  const machine = blueprint.createMachine(json);
  let [snapshot] = initialTransition(machine);
  return [
    snapshot.value,
    ...events.map((event) => {
      [snapshot] = transition(machine, snapshot, event);
      return snapshot.status === 'done' ? `${String(snapshot.value)} (done)` : snapshot.value;
    }),
  ];
}

const checked = (v5: string, pg: string, cpu = 'single'): MachineEvent => ({
  type: 'checked',
  bands: { v5, pg, cpu },
});

describe('emitMachine()', () => {
  test('gives an XState machine as pure JSON', () => {
    expect(machineOf()).toEqual({
      id: 'tree',
      initial: 's-5-v-at-the-pin',
      on: {
        go: ['5-v-at-the-pin', 'cards', 'either', 'out'].map((section) => ({
          target: `#tree.s-${section}`,
          guard: { type: 'names', params: { section } },
        })),
      },
      states: {
        's-5-v-at-the-pin': {
          on: {
            checked: [
              {
                target: '#tree.s-either',
                guard: { type: 'within', params: { bands: { v5: ['none', 'low'], pg: ['low'] } } },
              },
              {
                target: '#tree.s-cards',
                guard: { type: 'within', params: { bands: { v5: ['good'], pg: ['high'], cpu: ['dual'] } } },
              },
              { target: '#tree.s-out' },
            ],
            unread: [{ target: '#tree.s-out' }],
          },
        },
        's-cards': { on: { done: [{ target: '#tree.s-5-v-at-the-pin' }] } },
        's-either': {
          initial: 'remedy-1',
          states: {
            'remedy-1': { on: { done: [{ target: 'proof-1' }], failed: [{ target: 'remedy-2' }] } },
            'proof-1': { on: { proved: [{ target: '#tree.mended' }], failed: [{ target: 'remedy-2' }] } },
            'remedy-2': { on: { done: [{ target: 'proof-2' }], failed: [{ target: 'aside' }] } },
            'proof-2': { on: { proved: [{ target: '#tree.mended' }], failed: [{ target: 'aside' }] } },
            aside: {},
          },
        },
        's-out': { tags: ['stop'] },
        mended: { type: 'final' },
      },
    });
  });

  test('walks to a fault, through its remedies, to the mended board', () => {
    expect(
      walk(checked('low', 'low'), { type: 'done' }, { type: 'failed' }, { type: 'done' }, { type: 'proved' }),
    ).toEqual([
      's-5-v-at-the-pin',
      { 's-either': 'remedy-1' },
      { 's-either': 'proof-1' },
      { 's-either': 'remedy-2' },
      { 's-either': 'proof-2' },
      'mended (done)',
    ]);
  });

  test('puts a fault aside when the last remedy failed or was declined', () => {
    expect(walk(checked('none', 'low'), { type: 'failed' }, { type: 'failed' }).at(-1)).toEqual({
      's-either': 'aside',
    });
  });

  test('takes the first line that fits, and "otherwise" for the rest', () => {
    expect(walk(checked('good', 'high', 'dual')).at(-1)).toBe('s-cards');
    expect(walk(checked('good', 'high', 'single')).at(-1)).toBe('s-out');
    expect(walk(checked('high', 'low')).at(-1)).toBe('s-out');
  });

  test('leads on where something could not be read, and loops', () => {
    expect(walk({ type: 'unread' }).at(-1)).toBe('s-out');
    expect(walk(checked('good', 'high', 'dual'), { type: 'done' }).at(-1)).toBe('s-5-v-at-the-pin');
  });

  test('goes to any section from anywhere', () => {
    expect(
      walk(checked('low', 'low'), { type: 'go', section: 'cards' }, { type: 'go', section: 'either' }),
    ).toEqual(['s-5-v-at-the-pin', { 's-either': 'remedy-1' }, 's-cards', { 's-either': 'remedy-1' }]);
    expect(walk({ type: 'go', section: 'nowhere' }).at(-1)).toBe('s-5-v-at-the-pin');
  });
});
