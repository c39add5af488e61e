import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { walkWith } from '../helpers/bench.ts';
import { lookWhole, supplyTree, wholeWalks } from '../helpers/look-whole.ts';
import { faultsOfLook } from './helpers/faults-of-look.ts';
import { faultsWithBigLetters } from './helpers/faults-with-big-letters.ts';
import { putOnBench } from './helpers/put-on-bench.ts';
import type { Look } from './helpers/show-look.ts';
import { showTrees } from './helpers/show-trees.ts';
import { useRoom } from './helpers/use-player.ts';

const trees = [lookWhole(), supplyTree()] as const;
const room = useRoom({ prepare: (context) => showTrees(context, ...trees) });

const names = Object.keys(wholeWalks) as readonly (keyof typeof wholeWalks)[];
const placeOf = (name: (typeof names)[number]): string => `/job/whole${names.indexOf(name)}`;

const typed = (text: string) => async (page: Page) => {
  await page.locator('.field-input').focus();
  await page.keyboard.type(text);
};
const on = (walk: (typeof names)[number], name: string, act: (page: Page) => Promise<void>): Look => ({
  name,
  place: placeOf(walk),
  act,
});

const looks: readonly Look[] = [
  ...names.map((name) => ({ name, place: placeOf(name) })),
  on('beeps', 'beeps understood', typed('1 long 2 short')),
  on('a reading with instruments', 'a value in doubt', typed('4.754')),
  on('many alike', 'many alike in every state', typed('A3 A11 stuck; A5 A6 A7 floats; rest moves')),
  on('many values alike', 'many values typed', typed('bank1 2.9; bank2 3.2; rest good')),
  on('a count', 'a count with a failure', typed('11 of 12')),
  on('what must be seen first', 'the sheet to go on all the same', async (page) => {
    await page.getByRole('button', { name: 'Go on all the same' }).press('Enter');
    await page.locator('dialog input').waitFor();
  }),
  on('many alike', 'the sheet for a board that runs', async (page) => {
    await page.keyboard.press('Alt+M');
    await page.getByRole('button', { name: 'It runs all of a sudden' }).press('Enter');
    await page.locator('dialog input').fill('pressed the address joint');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Undo what was touched' }).waitFor();
  }),
];

beforeAll(async () => {
  const [tree, supply] = trees;
  for (const name of names) {
    const session = walkWith(tree, { board: null, laterTrees: [supply] }, ...wholeWalks[name]);
    await putOnBench(room(), `whole${names.indexOf(name)}`, session);
  }
});

describe.each([360, 820, 1440])('at %i px', (width) => {
  test.each(looks)('$name has its layout right and no axe violation, by day and by night', async (look) => {
    expect(await faultsOfLook(room(), look, width)).toEqual({ layout: [], light: [], dark: [] });
  });
});

test('every step that only the whole language has keeps its layout at 360 px with big letters', async () => {
  expect(
    await faultsWithBigLetters(
      room(),
      names.map((name) => ({ name, place: placeOf(name) })),
    ),
  ).toEqual([]);
});
