import { expect, test } from 'vitest';
import { replay } from '../../engine/run/index.ts';
import { lookWhole, supplyTree } from '../helpers/look-whole.ts';
import { showTrees } from './helpers/show-trees.ts';
import { storedEntries, timeless } from './helpers/stored-entries.ts';
import { usePlayer } from './helpers/use-player.ts';
import { walkByKeys } from './helpers/walk-by-keys.ts';

const openRoom = usePlayer();
const tree = lookWhole();
const supply = supplyTree();
const withTrees = () => openRoom({ prepare: (context) => showTrees(context, tree, supply) });
/** The page fetches the other tree by itself once it is due. */
const unopened = replay(tree, [], { board: null, laterTrees: [supply] });

const opened = ['open: Grey tower; A. Keeper; starts now and then', 'bus := 66.6', 'long short short'];

/** Walks by keyboard, and the page holds what the engine says at every step. */
async function walks(answers: readonly string[]) {
  const { page } = await withTrees();
  const session = await walkByKeys(page, unopened, [...opened, ...answers]);
  expect((await storedEntries(page)).map(timeless)).toEqual(session.entries.map(timeless));
  return { page, session };
}

test('what must be seen first is taken right there, and a common factor leads to the crystal, by keyboard', async () => {
  const { page, session } = await walks([
    'r_v5 = 150',
    'v5 = 5',
    'done',
    'arrange',
    'v5_bare = 5,01',
    'cpu_clk = 42',
    'slot_clk = 21',
    'usb_clk = 30,2',
  ]);
  expect(session.position.section?.id).toBe('crystal');
  expect(await page.locator('.finding').textContent()).toContain('Three readings show 0.63');
});

test('a procedure is followed to its end and its fault is mended with the part named, by keyboard', async () => {
  const { session } = await walks([
    'r_v5 = 12',
    'override: lab supply with a limit of 100 mA',
    'v5 = 4.2',
    'done',
    'acknowledge',
    'r_gnd of v5, 2 Ω = 0.4',
    'part of v5, 2 Ω = seen',
    'remedied: C3; tantalum capacitor = 0.40 EUR',
  ]);
  expect(session.entries.at(-1)).toMatchObject({ kind: 'remedied', which: 'C3' });
});

test('many alike, counts and a proof by counting are typed, by keyboard', async () => {
  const { session } = await walks([
    'r_v5 = 150',
    'v5 = 5',
    'done',
    'arrange',
    'v5_bare = 5',
    'cpu_clk = 66.6',
    'slot_clk = 33.3',
    'usb_clk = 48',
    'lines = all moves',
    'cells = bank1 3,2; rest 3,3',
    'runs: pressed the address joint',
    'undone: not tried',
    'starts = 3 of 10',
    'remedied: U5',
    'lines = all moves',
    'starts = 20 of 20',
    'close: press the joint once a year',
  ]);
  expect(session.closed).toEqual({ mended: true });
});

test('a job goes on in another tree, with what was read, by keyboard', async () => {
  const { session } = await walks([
    'r_v5 = 150',
    'v5 = 4.2',
    'done',
    'acknowledge',
    'r_gnd of v5, 2 Ω = 50',
    'hand over',
    'load = falls',
  ]);
  expect(session.loaded.tree.id).toBe('supply');
});
