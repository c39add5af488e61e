import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Job } from '../../engine/model/job.ts';
import type { Session } from '../../engine/run/index.ts';
import { benchTree, opened, say, walk } from '../helpers/bench.ts';
import { answerByKeys } from './helpers/answer-by-keys.ts';
import { savedFile } from './helpers/job-files.ts';
import { putOnBench } from './helpers/put-on-bench.ts';
import { screenOf } from './helpers/screen-of.ts';
import { showTrees } from './helpers/show-trees.ts';
import { standsAt } from './helpers/stands-at.ts';
import { setStoreFault, storeWrites, withStoreFaults } from './helpers/store-faults.ts';
import { storedEntries, timeless } from './helpers/stored-entries.ts';
import { type Room, usePlayer } from './helpers/use-player.ts';
import { walkByKeys } from './helpers/walk-by-keys.ts';

const openRoom = usePlayer();
const tree = benchTree();
const rails = walk(tree, ...opened, 'story = nothing');

/** A room with a job at its first measured reading, and a store whose faults can be switched. */
async function atRails(): Promise<Room> {
  const room = await openRoom({
    prepare: async (context) => {
      await showTrees(context, tree);
      await withStoreFaults(context);
    },
  });
  await putOnBench(room, 'board', rails);
  await standsAt(room.page, rails);
  return room;
}

const field = (page: Page) => page.getByRole('textbox', { name: '5 V at the slot' });
const notice = (page: Page) => page.locator('.notice');
const kept = async (page: Page) => (await storedEntries(page, 'board')).map(timeless);
const said = (session: Session) => session.entries.map(timeless);

describe('an entry', () => {
  test('is asked of the store with strict durability, each time', async () => {
    const { page } = await atRails();
    await walkByKeys(page, rails, ['v5 = 5', 'note: warm hands', 'back', 'retake v5 = 5.02']);
    const { durabilities } = await storeWrites(page);
    expect(durabilities.length).toBeGreaterThanOrEqual(5);
    expect(new Set(durabilities)).toEqual(new Set(['strict']));
  });

  test('is in the store before the screen moves on, however long that takes, and Enter meanwhile adds none', async () => {
    const { page } = await atRails();
    await setStoreFault(page, 'slow');
    await page.keyboard.type('4.98');
    for (let press = 0; press < 3; press += 1) await page.keyboard.press('Enter');
    await page.clock.runFor(5000);
    await standsAt(page, rails);
    expect(await field(page).inputValue()).toBe('4.98');

    await setStoreFault(page, 'none');
    const next = say(rails, 'v5 = 4.98');
    await standsAt(page, next);
    expect(await notice(page).count()).toBe(0);
    expect(await kept(page)).toEqual(said(next));
  });
});

describe('a store without room', () => {
  test('is told of, keeps what was typed, offers the job as a file, and takes the answer once there is room', async () => {
    const { page } = await atRails();
    await setStoreFault(page, 'full');
    await page.keyboard.type('4.98');
    await page.keyboard.press('Enter');
    await notice(page).waitFor();
    expect(await notice(page).textContent()).toMatch(/^Not entered\. There is no room left on this device/);
    expect(await field(page).inputValue()).toBe('4.98');
    expect(await kept(page)).toEqual(said(rails));

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save the job as a file' }).press('Enter');
    const job: Job = JSON.parse(await savedFile(await download));
    expect(job.entries.map(timeless)).toEqual(said(rails));

    await setStoreFault(page, 'none');
    await field(page).press('Enter');
    const next = say(rails, 'v5 = 4.98');
    await standsAt(page, next);
    expect(await notice(page).count()).toBe(0);
    expect(await kept(page)).toEqual(said(next));
  });

  test('keeps a note in its sheet, with the reason beside it, until it can be kept', async () => {
    const { page } = await atRails();
    await setStoreFault(page, 'full');
    await page.keyboard.press('Alt+N');
    const words = page.getByLabel('What you saw or did');
    await words.fill('smells of resin');
    await page.getByRole('button', { name: 'Keep the note' }).press('Enter');
    await page.getByRole('dialog').getByRole('alert').waitFor();
    expect(await page.getByRole('dialog').getByRole('alert').textContent()).toContain('no room left');
    expect(await words.inputValue()).toBe('smells of resin');

    await setStoreFault(page, 'none');
    await page.getByRole('button', { name: 'Keep the note' }).press('Enter');
    const next = say(rails, 'note: smells of resin');
    await standsAt(page, next);
    expect(await kept(page)).toEqual(said(next));
  });

  test('opens no job, keeps what was written about the board, and opens it once there is room', async () => {
    const { page, url } = await atRails();
    await page.goto(`${url}#/open/bench-tree`);
    await page.getByLabel('Which board is it?').fill('Grey tower');
    await setStoreFault(page, 'full');
    await page.keyboard.press('Enter');
    await page.getByRole('alert').waitFor();
    expect(await page.getByRole('alert').textContent()).toContain('no room left');
    expect(await page.getByLabel('Which board is it?').inputValue()).toBe('Grey tower');

    await setStoreFault(page, 'none');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'How is this board set?' }).waitFor();
    await page.goto(`${url}#/`);
    await page.getByRole('link', { name: 'Board 7', exact: true }).waitFor();
    expect(await page.getByRole('link', { name: 'Grey tower', exact: true }).count()).toBe(1);
  });
});

test('a browser that refuses its store is told of on the bench and on a job, and both can be tried again', async () => {
  const { page, url, context } = await atRails();
  await context.addInitScript(() => {
    const real = indexedDB.open;
    IDBFactory.prototype.open = function (...args) {
      if (!location.search.includes('refused')) return real.apply(this, args);
      throw new DOMException('denied here', 'SecurityError');
    };
  });
  await page.goto(`${url}?refused#/`);
  await page.getByText('The bench cannot be read').waitFor();
  expect(await page.getByRole('alert').textContent()).toContain('keeps no data now (denied here)');
  await page.goto(`${url}?refused#/job/board`);
  await page.getByText('This job cannot be opened').waitFor();

  await page.evaluate(() => history.replaceState(null, '', location.pathname + location.hash));
  await page.getByRole('button', { name: 'Try again' }).click();
  await standsAt(page, rails);
});

describe('two windows on one job', () => {
  test('show the same step: the one that looks on is told and loses only what no longer fits', async () => {
    const { page, context, url } = await atRails();
    const other = await context.newPage();
    await other.goto(`${url}#/job/board`);
    await standsAt(other, rails);
    await other.keyboard.type('4.5');

    await page.bringToFront();
    const next = await walkByKeys(page, rails, ['v5 = 4.98']);
    await standsAt(other, next);
    const told = (await notice(other).textContent()) ?? '';
    expect(told).toContain('Another window went on with this job');
    expect(told).toContain('Typed here was "4.5"');
    expect(await kept(page)).toEqual(said(next));
  });

  test('that answer the same question both keep what was entered first, and the second is told', async () => {
    const { page, context, url } = await atRails();
    await context.addInitScript(() => {
      // The other window hears nothing, as when both answer in the same instant.
      Object.assign(globalThis, { BroadcastChannel: undefined });
    });
    const other = await context.newPage();
    await other.goto(`${url}#/job/board`);
    await standsAt(other, rails);
    const first = await walkByKeys(page, rails, ['v5 = 4.98']);

    expect(screenOf(first)).not.toEqual(screenOf(rails));
    await other.keyboard.type('4.5');
    await other.keyboard.press('Enter');
    await standsAt(other, first);
    const told = (await notice(other).textContent()) ?? '';
    expect(told).toMatch(/^Not entered\. Another window went on with this job/);
    expect(told).toContain('Typed here was "4.5"');
    expect(await kept(page)).toEqual(said(first));

    const second = await walkByKeys(other, first, ['pg = 4.5']);
    expect(await kept(page)).toEqual(said(second));
    await answerByKeys(page, first, { say: 'value', reading: null, typed: '4.4', board: 'failing' });
    await standsAt(page, second);
    expect(await kept(page)).toEqual(said(second));
  });
});
