import { readFile } from 'node:fs/promises';
import type { Download, Page } from 'playwright-core';
import { tabAndPress } from './keyboard.ts';

/** Saves the job on the screen as a file, by keyboard, and gives its text. */
export async function saveJobByKeys(page: Page): Promise<string> {
  const download = page.waitForEvent('download');
  await page.keyboard.press('Alt+M');
  await tabAndPress(page, 'Save as a file');
  return savedFile(await download);
}

/** The text of a file that the page gave away. */
export const savedFile = async (download: Download): Promise<string> =>
  readFile(await download.path(), 'utf8');

/** Gives a file to the bench, by keyboard; what the bench says about it. */
export async function takeInByKeys(page: Page, name: string, text: string): Promise<string> {
  const said = page.locator('p[role="status"]');
  const before = await said.textContent();
  const chooser = page.waitForEvent('filechooser');
  await tabAndPress(page, 'Take in a job file');
  await (await chooser).setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
  await page.waitForFunction(
    (old) => !['', old].includes(document.querySelector('p[role="status"]')?.textContent ?? ''),
    before,
  );
  return (await said.textContent()) ?? '';
}
