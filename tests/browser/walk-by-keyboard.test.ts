import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import type { Session } from '../../engine/run/index.ts';
import { type Served, servePlayer } from '../helpers/serve-player.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { tabAndPress } from './helpers/keyboard.ts';
import { mendingAnswers } from './helpers/mending-answers.ts';
import { startBrowserIn } from './helpers/persistent-browser.ts';
import { standsAt } from './helpers/stands-at.ts';
import { jobIdOf, storedEntries, timeless } from './helpers/stored-entries.ts';
import { unopened, walkByKeys } from './helpers/walk-by-keys.ts';

const tree = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree as CompiledTree;
const answers = mendingAnswers(tree, 'crystal', {
  open: 'open: Grey tower; A. Keeper; stood in a loft for years',
  remedied: 'remedied: beside the clock chip; crystal 14.318 MHz = 3.20 EUR; solder = 0.10 EUR',
  close: 'close: Have the battery looked at once a year',
});

const folder = mkdtempSync(join(tmpdir(), 'deadboard-walk-'));
let served: Served;
beforeAll(async () => {
  served = await servePlayer();
});
afterAll(async () => {
  await served.close();
  rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
});

/** The page shows the step where the walk stands, and the store holds what was answered and nothing else. */
async function nothingIsLost(page: Page, session: Session): Promise<void> {
  await standsAt(page, session);
  expect((await storedEntries(page)).map(timeless)).toEqual(session.entries.map(timeless));
}

/** From the first page back to the job, by its card on the bench. */
async function takeUp(page: Page, board: string): Promise<void> {
  await page.goto(served.url);
  await page.getByRole('link', { name: board, exact: true }).waitFor();
  await tabAndPress(page, board);
}

test('a board is walked from its symptom to the record by keyboard; reloaded, closed and killed on the way, it loses no entry', async () => {
  const quarter = Math.ceil(answers.length / 4);
  const part = (number: number) => answers.slice(quarter * (number - 1), quarter * number);

  const first = await startBrowserIn(folder);
  await first.page.goto(served.url);
  let session = await walkByKeys(first.page, unopened(tree), part(1));
  const job = jobIdOf(first.page);

  await first.page.reload();
  await nothingIsLost(first.page, session);
  session = await walkByKeys(first.page, session, part(2));

  const second = await first.context.newPage();
  await first.page.close();
  await takeUp(second, 'Grey tower');
  await nothingIsLost(second, session);
  session = await walkByKeys(second, session, part(3));

  await first.kill();
  const third = await startBrowserIn(folder);
  await takeUp(third.page, 'Grey tower');
  await nothingIsLost(third.page, session);
  expect(jobIdOf(third.page)).toBe(job);
  session = await walkByKeys(third.page, session, part(4));

  const record = await third.page.getByRole('article').textContent();
  for (const words of [
    'Grey tower',
    'crystal 14.318 MHz: 3.20 EUR',
    'Have the battery looked at once a year',
  ])
    expect(record).toContain(words);
  expect(session.closed).toEqual({ mended: true });
  expect((await storedEntries(third.page)).map(timeless)).toEqual(session.entries.map(timeless));
  expect(first.trouble).toEqual([]);
  expect(third.trouble).toEqual([]);
  await third.context.close();
});
