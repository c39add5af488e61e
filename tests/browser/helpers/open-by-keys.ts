import type { Page } from 'playwright-core';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Answer } from '../../../engine/run/index.ts';
import { tabAndPress, tabTo } from './keyboard.ts';

/** From the first screen to an opened job: the symptom is found by its words, the box is labelled. */
export async function openByKeys(
  page: Page,
  tree: CompiledTree,
  { board, owner, story }: Extract<Answer, { readonly say: 'open' }>,
): Promise<void> {
  await page.keyboard.press('Enter');
  await page.getByLabel("In the owner's words").waitFor();
  await page.keyboard.type(tree.symptom);
  await page.getByText('One fits').waitFor();
  await page.keyboard.press('Enter');
  await page.getByLabel('Which board is it?').waitFor();
  await page.keyboard.type(board);
  await tabTo(page, 'Whose is it?');
  await page.keyboard.type(owner);
  await tabTo(page, 'What does the owner say?');
  await page.keyboard.type(story);
  await tabAndPress(page, 'Put it on the bench');
}
