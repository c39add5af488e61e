import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pictureUrl } from '../../engine/library/picture-url.ts';
import type { Entry } from '../../engine/model/entry.ts';
import { treeOf, walkWith } from '../helpers/bench.ts';
import { benchSheet } from '../player/helpers/bench-sheet.ts';
import { faultsOfLook } from './helpers/faults-of-look.ts';
import { tabAndPress, tabTo } from './helpers/keyboard.ts';
import { putOnBench } from './helpers/put-on-bench.ts';
import { type Look, showLook } from './helpers/show-look.ts';
import { showBoards, showTrees } from './helpers/show-trees.ts';
import { storedEntries } from './helpers/stored-entries.ts';
import { type Room, usePlayer } from './helpers/use-player.ts';

const tree = treeOf(readFileSync('tests/helpers/bench-tree.md', 'utf8'), 'bench-tree');
const newer = { ...tree, digest: `${tree.digest.slice(0, -1)}0`, title: 'Board held in reset, again' };
const drawing = pictureUrl(
  'k5.svg',
  new TextEncoder().encode(
    '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 880 1000"><rect width="880" height="1000" fill="#1c5c45"/></svg>',
  ),
);
const sheet = benchSheet();
const board = { ...sheet, pictures: sheet.pictures.map((picture) => ({ ...picture, url: drawing })) };
const meter = 'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.8 % + 3) at 10 mV';

const openRoom = usePlayer();
const withBoards = (...trees: readonly (typeof tree)[]) =>
  openRoom({
    prepare: async (context) => {
      await showTrees(context, ...trees);
      await showBoards(context, board);
    },
  });

const kinds = (entries: readonly Entry[]) => entries.map(({ kind }) => kind);

test('instruments are typed, a board sheet is chosen and the jumpers are pressed, by keyboard', async () => {
  const { page } = await withBoards(tree);
  await tabAndPress(page, 'Instruments');
  await tabTo(page, 'One more instrument, as its leaflet says');
  await page.keyboard.type(meter);
  expect(await page.locator('.instrument-understanding').textContent()).toContain('± 32\u00a0mV at most');
  await page.keyboard.press('Enter');
  await page.locator('.instrument-line').waitFor();
  await tabAndPress(page, 'Back to the bench');

  await page.getByText('The bench is clear').waitFor();
  await page.keyboard.press('Enter');
  await page.getByText('One fits').waitFor();
  await page.keyboard.press('Enter');
  await page.getByLabel('Which board is it?').waitFor();
  await page.keyboard.type('Grey tower');
  await tabTo(page, /^None/);
  await page.keyboard.press('ArrowDown');
  await tabAndPress(page, 'Put it on the bench');

  await page.getByRole('heading', { name: 'Jumpers of this board' }).waitFor();
  await tabTo(page, '2-3');
  await page.keyboard.press('Space');
  expect(await page.locator('.field-input').inputValue()).toBe('JP1 2-3');
  await page.locator('.field-input').press('Enter');
  await page.getByRole('heading', { name: 'Kind of CPU fitted' }).waitFor();

  const entries = await storedEntries(page);
  expect(kinds(entries)).toEqual(['opened', 'equipped', 'set']);
  expect(entries[2]).toMatchObject({ typed: 'JP1 2-3', value: { value: '50000000' } });
});

const walked = walkWith(
  tree,
  { board, laterTrees: [] },
  ...[
    'open: Grey tower; A. Keeper; ',
    'bus := JP1 1-2, JP2 2-3',
    'cpu := single-rail',
    'yes',
    'acknowledge',
    'nothing',
  ],
);

test('a newer version of the tree is offered and taken by keyboard; its job stays after a reload', async () => {
  const room = await withBoards(newer);
  const { page } = room;
  await putOnBench(room, 'job1', walked);
  await page.getByText('There is another version of').waitFor();
  await tabAndPress(page, 'Go on with it');
  await page.getByText('There is another version of').waitFor({ state: 'detached' });
  await page.reload();
  await page.getByRole('heading', { name: walked.position.section?.title ?? '' }).waitFor();
  expect((await storedEntries(page)).at(-1)).toMatchObject({
    kind: 'tree',
    digest: newer.digest,
    why: 'newer',
  });
  expect(await page.getByText('There is another version of').count()).toBe(0);
});

const throughMore = (what: string) => async (page: Room['page']) => {
  await page.keyboard.press('Alt+M');
  await page.getByRole('button', { name: what }).press('Enter');
  await page.getByRole('heading', { name: what === 'The board' ? board.title : what }).waitFor();
};

const looks: readonly Look[] = [
  { name: 'the opening with sheets', place: '/open/bench-tree' },
  {
    name: 'the instruments',
    place: '/instruments',
    act: async (page) => {
      await page.locator('.instrument-input').fill(meter);
      await page.locator('.instrument-input').press('Enter');
      await page.locator('.instrument-input').fill('hand meter: 10 V');
    },
  },
  {
    name: 'jumpers, and where they belong',
    place: '/job/setting',
    act: (page) => page.locator('.field-input').fill('40'),
  },
  {
    name: 'jumpers that decide nothing yet',
    place: '/job/setting',
    act: async (page) => {
      await page.locator('.position').first().click();
      await page.getByText('The whole table').click();
    },
  },
  {
    name: 'where to touch',
    place: '/job/reading',
    act: (page) => page.locator('.picture-near').waitFor(),
  },
  { name: 'the sheet of the board', place: '/job/reading', act: throughMore('The board') },
  { name: 'the sheet of instruments', place: '/job/reading', act: throughMore('Instruments') },
];

describe.each([360, 820, 1440])('at %i px', (width) => {
  test('what stands around the walk has its layout right and no axe violation, by day and by night', async () => {
    const room = await withBoards(newer);
    await putOnBench(room, 'setting', walkWith(tree, { board, laterTrees: [] }, 'open: Grey tower; ; '));
    await putOnBench(room, 'reading', walked);
    const faults: unknown[] = [];
    for (const look of looks) {
      const { layout, light, dark } = await faultsOfLook(room, look, width);
      faults.push(...[...layout, ...light, ...dark].map((fault) => [look.name, fault]));
    }
    expect(faults).toEqual([]);
  });
});

test('with big letters on a phone nothing around the walk is cut off', async () => {
  const room = await withBoards(newer);
  const { page, url } = room;
  await page.setViewportSize({ width: 360, height: 740 });
  await putOnBench(room, 'setting', walkWith(tree, { board, laterTrees: [] }, 'open: Grey tower; ; '));
  await putOnBench(room, 'reading', walked);
  await page.evaluate(() => localStorage.setItem('deadboard.type', 'big'));
  await page.goto('about:blank');
  await page.goto(url);
  for (const look of looks) {
    await showLook(room, look);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth > window.innerWidth);
    expect([look.name, wide]).toEqual([look.name, false]);
  }
});
