import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect } from 'vitest';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { replay } from '../../../engine/run/index.ts';
import { servePlayer } from '../../helpers/serve-player.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';
import { tabAndPress } from './keyboard.ts';
import { mendingAnswers } from './mending-answers.ts';
import { startBrowserIn } from './persistent-browser.ts';
import { standsAt } from './stands-at.ts';
import { jobIdOf, storedEntries, timeless } from './stored-entries.ts';
import { unopened, walkByKeys } from './walk-by-keys.ts';

/** Longest time in ms from the last answer that was shown to the kill: an answer takes a part of it. */
const longest = 120;

/** Numbers from 0 to 1 that look random and are the same for the same seed. */
function* numbers(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (state * 48271) % 2147483647;
    yield state / 2147483647;
  }
}

/** Kills the browser `runs` times, each time somewhere in a walk and while the next answer is on its way.
 *  What the screen had moved past must be in the store afterwards, and nothing that was not said. */
export async function killWalks(runs: number, seed: number): Promise<void> {
  const random = numbers(seed);
  const next = (): number => random.next().value;
  const served = await servePlayer();
  try {
    for (let run = 0; run < runs; run += 1) {
      const steps = 2 + Math.floor(next() * (answers.length - 3));
      const where = `run ${run} of seed ${seed}, killed after ${steps} answers`;
      await killOnce(served.url, steps, next() * longest, where);
    }
  } finally {
    await served.close();
  }
}

const tree = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree as CompiledTree;
const answers = mendingAnswers(tree, 'crystal', {
  open: 'open: Grey tower; A. Keeper; silent',
  remedied: 'remedied: beside the clock chip',
  close: 'close',
});

async function killOnce(url: string, steps: number, pause: number, where: string): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'deadboard-kill-'));
  try {
    const first = await startBrowserIn(folder);
    await first.page.goto(url);
    const before = await walkByKeys(first.page, unopened(tree), answers.slice(0, steps));
    const job = jobIdOf(first.page);
    const onItsWay = walkByKeys(first.page, before, answers.slice(steps, steps + 1)).catch(() => null);
    await new Promise((resolve) => setTimeout(resolve, pause));
    await first.kill();
    const shown = (await onItsWay) ?? before;

    const second = await startBrowserIn(folder);
    await second.page.goto(url);
    await second.page.getByRole('link', { name: 'Grey tower', exact: true }).waitFor();
    await tabAndPress(second.page, 'Grey tower');
    await second.page.waitForURL(`${url}#/job/${job}`);
    const entries = await storedEntries(second.page);
    const kept = entries.map(timeless);
    const moved = shown.entries.map(timeless);
    expect(kept.slice(0, moved.length), where).toEqual(moved);
    expect(kept.length, where).toBeLessThanOrEqual(before.entries.length + 1);
    await standsAt(second.page, replay(tree, entries));
    await second.context.close();
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}
