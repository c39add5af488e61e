import type { BrowserContext } from 'playwright-core';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';

/** The player is given these trees instead of those that were built with it. */
export async function showTrees(context: BrowserContext, ...trees: readonly CompiledTree[]): Promise<void> {
  const rows = trees.map(({ id, title, symptom, boards, digest, sections, readings, faults }) => ({
    ...{ id, title, symptom, boards, digest },
    ...{ sections: sections.length, readings: readings.length, faults: faults.length },
  }));
  await context.route('**/trees/index.json', (route) => route.fulfill({ json: { format: 1, trees: rows } }));
  for (const tree of trees) {
    await context.route(`**/trees/${tree.id}.json`, (route) => route.fulfill({ json: tree }));
  }
}
