import type { Page } from 'playwright-core';
import type { Session } from '../../../engine/run/index.ts';
import { type Screen, screenOf } from './screen-of.ts';

/** Waits until the page shows the step at which `session` stands, with no sheet over it. */
export async function standsAt(page: Page, session: Session): Promise<void> {
  const screen = screenOf(session);
  try {
    await page.waitForFunction(shows, screen);
  } catch (error) {
    const seen = await page.getByRole('main').textContent();
    throw new Error(`the page does not stand at ${JSON.stringify(screen)} but shows:\n${seen}`, {
      cause: error,
    });
  }
}

/** Runs in the page. */
function shows({ heading, asked, main }: Screen): boolean {
  const words = (selector: string) => document.querySelector(selector)?.textContent ?? null;
  return (
    document.querySelector('dialog[open]') === null &&
    words('main h1') === heading &&
    words('main [aria-label="Answer"] h2') === asked &&
    words('main [aria-label="Answer"] .action-main > span') === main
  );
}
