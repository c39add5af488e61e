import type { BrowserContext, Page } from 'playwright-core';

/** Everything a page did that it must not: errors, warnings, and requests to other machines. */
export type Trouble = readonly string[];

const allowed = /^(?:https?:\/\/(?:127\.0\.0\.1|localhost)[:/]|data:|blob:)/;

/** Notes trouble of every page that this context has or will have. */
export function watched(context: BrowserContext): Trouble {
  const trouble: string[] = [];
  const watch = (page: Page) => {
    page.on('pageerror', (error) => trouble.push(`page error: ${error.message}`));
    page.on('crash', () => trouble.push('the page crashed'));
    page.on('console', (message) => {
      if (['error', 'warning'].includes(message.type())) trouble.push(`console: ${message.text()}`);
    });
    page.on('dialog', (dialog) => {
      trouble.push(`dialog: ${dialog.message()}`);
      void dialog.dismiss();
    });
  };
  for (const page of context.pages()) watch(page);
  context.on('page', watch);
  context.on('request', (request) => {
    if (!allowed.test(request.url())) trouble.push(`request to ${request.url()}`);
  });
  return trouble;
}
