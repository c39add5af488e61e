import type { Page } from 'playwright-core';
import type { Room } from './use-player.ts';

/** One screen to be looked at. */
export interface Look {
  readonly name: string;
  /** What stands behind `#`. */
  readonly place: string;
  readonly act?: (page: Page) => Promise<void>;
}

/** What a screen says while something is on its way. */
const waiting = [
  'One moment',
  'Taking the job up',
  'Looking what is on the bench',
  'Fetching the symptoms',
  'Fetching the tree',
  'Writing the record',
  'Fetching the trees',
  'Laying the board out',
  'Working out what each check was worth',
];

/** Goes there afresh, waits until it stands, and acts. */
export async function showLook({ page, url }: Room, { place, act }: Look): Promise<void> {
  await page.goto(`${url}#/elsewhere`);
  await page.getByText('Nothing stands here').waitFor();
  await page.goto(`${url}#${place}`);
  await page.waitForFunction((words) => {
    const blank = document.querySelector('.blank-title')?.textContent ?? null;
    const there = blank ?? document.querySelector('main h1')?.textContent ?? null;
    const desk = document.querySelector('.desk');
    const laidOut = desk === null || document.documentElement.style.getPropertyValue('--desk') !== '';
    return laidOut && there !== null && !words.includes(blank ?? '');
  }, waiting);
  await act?.(page);
}
