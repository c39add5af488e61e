import type { BrowserContext } from 'playwright-core';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { boardListingOf } from '../../../player/build/board-listing-of.ts';
import { listingOf } from '../../../player/build/listing-of.ts';

/** The player is given these trees instead of those that were built with it. */
export async function showTrees(context: BrowserContext, ...trees: readonly CompiledTree[]): Promise<void> {
  await show(context, 'trees', trees, listingOf);
}

/** The same with board sheets. */
export async function showBoards(
  context: BrowserContext,
  ...boards: readonly CompiledBoard[]
): Promise<void> {
  await show(context, 'boards', boards, boardListingOf);
}

async function show<T extends { readonly id: string }>(
  context: BrowserContext,
  shelf: 'trees' | 'boards',
  all: readonly T[],
  listing: (one: T) => unknown,
): Promise<void> {
  const index = { format: 1, [shelf]: all.map(listing) };
  await context.route(`**/${shelf}/index.json`, (route) => route.fulfill({ json: index }));
  for (const one of all) {
    await context.route(`**/${shelf}/${one.id}.json`, (route) => route.fulfill({ json: one }));
  }
}
