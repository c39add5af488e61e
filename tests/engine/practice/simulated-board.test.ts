import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { noEquipment, parseInstrument } from '../../../engine/doubt/index.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Equipment } from '../../../engine/model/instrument.ts';
import { diceOf } from '../../../engine/practice/dice.ts';
import { unlisted } from '../../../engine/practice/drill.ts';
import { hiddenIn } from '../../../engine/practice/hidden-in.ts';
import { planDrill } from '../../../engine/practice/plan-drill.ts';
import { showBand } from '../../../engine/practice/show-band.ts';
import { SimulatedBoard } from '../../../engine/practice/simulated-board.ts';
import { bandsOf, deriveObservation, observe } from '../../../engine/scale/index.ts';
import { benchTree, treeOf, wholeTree } from '../../helpers/bench.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const trees: readonly { readonly id: string; readonly tree: CompiledTree }[] = [
  ...shippedTrees.map(({ id, tree }) => ({ id, tree: tree as CompiledTree })),
  { id: 'bench-tree', tree: benchTree() },
  { id: 'whole-tree', tree: wholeTree() },
];

const meter: Equipment = {
  ...noEquipment,
  instruments: [
    'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.8 % + 3) at 10 mV; 600 Ω ± (1 % + 3) at 0.1 Ω',
  ].flatMap((line) => {
    const read = parseInstrument(line);
    return read.ok ? [read.value] : [];
  }),
};

const boardOf = (tree: CompiledTree, seed: number, equipment = noEquipment, isUnlisted = false) =>
  new SimulatedBoard(planDrill(tree, { seed, manner: 'free', unlisted: isUnlisted }), tree, null, equipment);

describe.each(trees)('a simulated board of $id', ({ tree }) => {
  const taken = tree.readings.filter(({ from, call }) => from === null && !call);

  test('shows every band of every reading so that it is judged back into that band, whatever the dice', () => {
    const { present } = boardOf(tree, 1);
    for (const equipment of [noEquipment, meter]) {
      for (const reading of taken) {
        for (const band of bandsOf(reading)) {
          for (let seed = 0; seed < 12; seed += 1) {
            const text = showBand(
              reading,
              band,
              { present, equipment },
              (draw) => diceOf(seed, ['test', draw]),
              seed % 2 === 0 ? null : diceOf(seed, ['noise']),
            );
            const seen = observe(reading, present, text, equipment);
            const bands = seen.ok ? seen.value.bands : [];
            expect(bands, `${reading.id} ${band}, shown as "${text}", seed ${seed}`).toContain(band);
            if (equipment === noEquipment) expect(bands, `${reading.id} ${text}`).toHaveLength(1);
          }
        }
      }
    }
  });

  test('answers the same in whatever order it is asked', () => {
    fc.assert(
      fc.property(fc.nat(100_000), fc.shuffledSubarray([...taken], { minLength: 1 }), (seed, order) => {
        const [one, other] = [boardOf(tree, seed), boardOf(tree, seed)];
        const first = new Map(taken.map(({ id }) => [id, one.take(id, 0)]));
        for (const { id } of order) expect(other.take(id, 0), id).toEqual(first.get(id));
      }),
      { numRuns: 12 },
    );
  });

  test('shows the symptom, and what is computed comes out in the band that was drawn for it', () => {
    const derived = tree.readings.filter(({ from }) => from !== null);
    let inBand = 0;
    let all = 0;
    for (let seed = 0; seed < 40; seed += 1) {
      const board = boardOf(tree, seed, noEquipment, true);
      for (const { reading, band } of tree.given) {
        expect(board.hidden.bands.bandOf(reading), `${reading}, seed ${seed}`).toBe(band);
      }
      for (const reading of derived) {
        const look = (id: string) => {
          const input = tree.readings.find((one) => one.id === id);
          const seen = input && observe(input, board.present, board.proven(id));
          return seen?.ok ? seen.value : null;
        };
        all += 1;
        const { bands } = deriveObservation(reading, board.present, look);
        if (bands.includes(board.hidden.bands.bandOf(reading.id))) inBand += 1;
      }
    }
    expect(inBand / Math.max(1, all)).toBeGreaterThanOrEqual(derived.length === 0 ? 0 : 0.95);
  });

  test('is normal in everything once it is mended', () => {
    const board = boardOf(tree, 5);
    for (const reading of taken.filter(({ normal }) => normal !== 'any')) {
      const seen = observe(reading, board.present, board.mended(reading.id));
      const bands = seen.ok ? seen.value.bands : [];
      expect(
        bands.every((band) => reading.normal.includes(band)),
        `${reading.id} ${bands}`,
      ).toBe(true);
    }
  });
});

describe('hiddenIn()', () => {
  test('hides each fault as often as its weight among boards that show the symptom says', () => {
    const tree = benchTree();
    const counts = new Map<string, number>();
    const boards = 4000;
    for (let seed = 0; seed < boards; seed += 1) {
      const { fault } = hiddenIn({ seed, unlisted: true, boardClass: null, chosen: false }, tree);
      counts.set(fault.id, (counts.get(fault.id) ?? 0) + 1);
    }
    const total = tree.faults.reduce((sum, { weight }) => sum + weight, 0);
    for (const { id, weight } of tree.faults) {
      const share = (0.95 * weight) / total;
      const off = (counts.get(id) ?? 0) - share * boards;
      expect(Math.abs(off), id).toBeLessThan(4 * Math.sqrt(boards * share * (1 - share)));
    }
    expect(Math.abs((counts.get(unlisted) ?? 0) - 0.05 * boards)).toBeLessThan(
      4 * Math.sqrt(boards * 0.05 * 0.95),
    );
  });
});

describe('slips and faults that come and go', () => {
  test('a slip belongs to one taking: taken again, the reading comes out as the board has it', () => {
    const tree = benchTree();
    let slips = 0;
    for (let seed = 0; seed < 1500; seed += 1) {
      const board = boardOf(tree, seed);
      const drawn = board.hidden.bands.bandOf('v5');
      const takings = [0, 1, 2].map((again) => board.take('v5', again, 'failing').band);
      const odd = takings.filter((band) => band !== drawn).length;
      slips += odd;
      expect(odd).toBeLessThan(3);
    }
    // One slip in fifty, of which one in four falls on the band that is right.
    const expected = 4500 * 0.02 * 0.75;
    expect(Math.abs(slips - expected)).toBeLessThan(4 * Math.sqrt(expected));
  });

  test('a board whose fault comes sometimes runs now and then, and reads normal then', () => {
    const tree = benchTree();
    const plan = planDrill(tree, { seed: 3, manner: 'free', fault: 'loose_socket' });
    const board = new SimulatedBoard(plan, tree, null, noEquipment);
    const takings = Array.from({ length: 60 }, (_, again) => board.take('post_code', again));
    const running = takings.filter((taking) => taking.board === 'running');
    expect(running.length).toBeGreaterThan(4);
    expect(running.length).toBeLessThan(30);
    expect(running.filter(({ band }) => band === 'runs').length).toBeGreaterThan(running.length * 0.8);
  });

  test('a fault that sits in a jumper makes the setting what it is on this board', () => {
    const tree = treeOf(`---
format: 1
kind: tree
title: Wrong bus
symptom: Nothing moves
boards: [586]
settings:
  bus: { is: Bus clock, unit: MHz, usual: 66 MHz }
readings:
  clk: { is: Clock, unit: MHz, scale: slow < bus * 99 % < good < bus * 101 % < fast, normal: good, source: common practice }
faults:
  jumper: { is: The jumper sits wrong, sets: { bus: 50 MHz }, shows: { clk: good }, source: common practice }
---

# Wrong bus

## Clock

Read \`clk\`.

- good → [Jumper](#jumper)
- otherwise → [Jumper](#jumper)

## Jumper

Fault \`jumper\`.

Set it.

Prove \`clk\`.
`);
    const board = boardOf(tree, 1);
    expect(board.present.settings.get('bus')).toMatchObject({ value: '50000000' });
    expect(Number.parseFloat(board.proven('clk'))).toBeGreaterThan(49.4);
    expect(Number.parseFloat(board.proven('clk'))).toBeLessThan(50.6);
  });
});
