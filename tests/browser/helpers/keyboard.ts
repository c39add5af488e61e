import type { Page } from 'playwright-core';

/** More presses of Tab than any screen has stops. */
const mostStops = 120;

/** Presses Tab until the focus stands on the control with this name, as a screen reader would say it:
 *  its own words without what is hidden from it. */
export async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  const seen: string[] = [];
  for (let stops = 0; stops < mostStops; stops += 1) {
    const focused = await focusedName(page);
    if (typeof name === 'string' ? focused === name : name.test(focused)) return;
    seen.push(focused);
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab never comes to "${name}", only to ${[...new Set(seen)].join(' | ')}`);
}

/** Goes to a control by Tab and presses it. */
export async function tabAndPress(page: Page, name: string | RegExp): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press('Enter');
}

/** Name of what has the focus. */
export const focusedName = (page: Page): Promise<string> => page.evaluate(nameOfFocused);

/** Runs in the page. */
function nameOfFocused(): string {
  const focused = document.activeElement;
  if (focused === null) return '';
  const labels = (focused as HTMLInputElement).labels;
  const named = labels !== null && labels !== undefined && labels.length > 0 ? labels[0] : focused;
  const copy = named?.cloneNode(true) as Element;
  for (const hidden of copy.querySelectorAll('[aria-hidden="true"], small')) hidden.remove();
  return (focused.getAttribute('aria-label') ?? copy.textContent ?? '').trim();
}
