import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Session } from '../../engine/run/index.ts';
import { treeOf, walk } from '../helpers/bench.ts';
import { faultsOfLook } from './helpers/faults-of-look.ts';
import { faultsWithBigLetters } from './helpers/faults-with-big-letters.ts';
import { putOnBench } from './helpers/put-on-bench.ts';
import type { Look } from './helpers/show-look.ts';
import { showTrees } from './helpers/show-trees.ts';
import { useRoom } from './helpers/use-player.ts';

const tree = treeOf(readFileSync('tests/browser/look-tree.md', 'utf8'), 'look');
const room = useRoom({ prepare: (context) => showTrees(context, tree) });

const open = [
  'open: Grey tower with the long label, shelf 7; A. Keeper; stood in a loft for years, then nothing',
];
const set = [...open, 'bus := 33.3', 'cpu := single-rail'];
const task = [...set, 'yes', 'acknowledge'];
const rails = [...task, 'done'];
const code = [...rails, 'v5 = 4.6', 'm12 = -12', 'r_gnd = 1.2k'];
const danger = [...rails, 'v5 = 5', 'm12 = -12.1', 'r_gnd = 1.2k'];
const noClock = [...danger, 'acknowledge', 'clk = 0.2'];
const proof = [...noClock, 'todo: order a battery holder', 'remedied: Y1; crystal = 3.20 EUR'];
const closing = [...proof, 'clk = 33.3', 'code = FF', 'post = runs'];
const closed = [...closing, 'note: smells of resin', 'close: keep it dry'];

/** Walks that end at every kind of step. */
const walks: Readonly<Record<string, readonly string[]>> = {
  'a setting with a unit': open,
  'a setting with choices': [...open, 'bus := 33.3'],
  'the symptom': set,
  'a warning above everything': [...set, 'yes'],
  'a task': task,
  'a task that waits': [...task, 'wait'],
  'a reading with a scale': rails,
  'a negative rail': [...rails, 'v5 = 4.6'],
  'a reading with codes': code,
  'a reading with choices and a wait': [...code, 'code = 05'],
  'a danger': danger,
  'a reading judged by a setting': [...danger, 'acknowledge'],
  'too close to call': [...rails, 'v5 = > 4.9', 'm12 = -12', 'r_gnd = 1.2k'],
  'a remedy': noClock,
  'a proof': proof,
  'a proof half taken': [...proof, 'clk = 33.3'],
  'a fault put aside': [...noClock, 'decline: no part', 'decline: no part'],
  'a stop': [...rails, 'v5 = 6', 'm12 = -12', 'r_gnd = 1.2k'],
  'the closing': closing,
  'a closed job': closed,
};
const names = Object.keys(walks);
const idOf = (name: string): string => `job${names.indexOf(name)}`;

const onJob = (name: string, what: string, act: (page: Page) => Promise<void>): Look => ({
  name: what,
  place: `/job/${idOf(name)}`,
  act,
});
const typed = (text: string) => (page: Page) => page.keyboard.type(text);
const pressed =
  (...keys: readonly string[]) =>
  async (page: Page) => {
    for (const key of keys) await page.keyboard.press(key);
    await page.getByRole('dialog').waitFor();
  };

const throughMore = (what: string) => async (page: Page) => {
  await pressed('Alt+M')(page);
  await page.getByRole('button', { name: what }).press('Enter');
  await page.locator('dialog input').waitFor();
};
const openLedgers = (page: Page) =>
  page.evaluate(() => {
    for (const ledger of document.querySelectorAll('details')) ledger.open = true;
  });

const looks: readonly Look[] = [
  { name: 'the bench with jobs', place: '/' },
  { name: 'the symptoms', place: '/symptoms' },
  { name: 'no symptom', place: '/symptoms', act: typed('smoke') },
  { name: 'the opening', place: '/open/look' },
  { name: 'an address that leads nowhere', place: '/nowhere' },
  { name: 'a job that is not there', place: '/job/gone' },
  ...names.map((name) => ({ name, place: `/job/${idOf(name)}` })),
  onJob('a reading with a scale', 'a reading understood', typed('4.6')),
  onJob('a reading with a scale', 'a reading refused', typed('4.6 kHz')),
  onJob('a reading with a scale', 'a reading between bands', typed('4.6..5')),
  onJob('a reading with codes', 'a code understood', typed('0D')),
  onJob('a reading with a scale', 'the sheet of everything else', pressed('Alt+M')),
  onJob('a reading with a scale', 'the sheet for a note', pressed('Alt+N')),
  onJob('a reading with a scale', 'the sheet for open work', pressed('Alt+W')),
  onJob('a reading with a scale', 'the sheet of settings', pressed('Alt+S')),
  onJob('a reading with a scale', 'the sheet for what cannot be read', pressed('Alt+C')),
  onJob('a reading with a scale', 'the sheet of keys', pressed('?')),
  onJob('a reading with a scale', 'the sheet of the look', async (page) => {
    await page.getByRole('button', { name: 'Look' }).press('Enter');
    await page.getByRole('dialog').waitFor();
  }),
  onJob('a reading with a scale', 'the sheet to go elsewhere', throughMore('Go on at another step')),
  onJob('a reading with a scale', 'the sheet to close', throughMore('Close the job')),
  onJob('a danger', 'the sheet to retake a reading', async (page) => {
    await openLedgers(page);
    await page.getByRole('button', { name: /^Retake 5 V at the slot/ }).press('Enter');
    await page.getByRole('heading', { name: /^Retake: / }).waitFor();
    await page.keyboard.type('4,7');
  }),
  onJob('a danger', 'everything that is known', openLedgers),
  onJob('a danger', 'the sheet to change a setting', async (page) => {
    await pressed('Alt+S')(page);
    await page.getByRole('button', { name: /^Change Bus/ }).click();
    await page.getByRole('heading', { name: /^Change: / }).waitFor();
  }),
  { name: 'a job of another day', place: '/job/earlier' },
  {
    name: 'the bench copy of the record',
    place: `/job/${idOf('a closed job')}/record`,
    act: async (page) => {
      await page.getByText('for the bench').click();
      await page.getByRole('heading', { name: 'Every reading' }).waitFor();
    },
  },
  { name: 'the record', place: `/job/${idOf('a closed job')}/record` },
];

beforeAll(async () => {
  for (const [name, answers] of Object.entries(walks)) {
    await putOnBench(room(), idOf(name), walk(tree, ...answers));
  }
  const session = walk(tree, ...code);
  const entries = session.entries.map((entry) => ({ ...entry, at: entry.at.replace('03-01', '02-20') }));
  await putOnBench(room(), 'earlier', { ...session, entries } as Session);
});

describe.each([360, 820, 1440])('at %i px', (width) => {
  test.each(looks)('$name has its layout right and no axe violation, light and dark', async (look) => {
    expect(await faultsOfLook(room(), look, width)).toEqual({ layout: [], light: [], dark: [] });
  });
});

test('every step keeps its layout at 360 px with big letters', async () => {
  expect(
    await faultsWithBigLetters(
      room(),
      names.map((name) => ({ name, place: `/job/${idOf(name)}` })),
    ),
  ).toEqual([]);
});
