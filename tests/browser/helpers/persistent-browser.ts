import type { BrowserContext, Page } from 'playwright-core';
import { launchChromiumIn } from '../../helpers/chromium.ts';
import { benchMorning } from './use-player.ts';
import { type Trouble, watched } from './watched.ts';

/** A browser that keeps everything in one folder and can be killed like a machine that loses power. */
export interface PersistentBrowser {
  readonly context: BrowserContext;
  readonly page: Page;
  readonly trouble: Trouble;
  /** SIGKILL to the browser and all its processes; resolves when it is gone. */
  kill(): Promise<void>;
}

export async function startBrowserIn(folder: string): Promise<PersistentBrowser> {
  const context = await launchChromiumIn(folder);
  const trouble = watched(context);
  await context.clock.install({ time: benchMorning });
  const page = context.pages()[0] ?? (await context.newPage());
  page.setDefaultTimeout(10_000);
  await page.setViewportSize({ width: 1440, height: 900 });
  const pid = await processOf(context);
  return {
    context,
    page,
    trouble,
    async kill() {
      const gone = new Promise((resolve) => context.once('close', resolve));
      process.kill(-pid, 'SIGKILL');
      await gone;
    },
  };
}

/** The browser leads a process group of its own. */
async function processOf(context: BrowserContext): Promise<number> {
  const session = await context.browser()?.newBrowserCDPSession();
  const { processInfo } = (await session?.send('SystemInfo.getProcessInfo')) ?? { processInfo: [] };
  const browser = processInfo.find(({ type }) => type === 'browser');
  if (browser === undefined) throw new Error('expected the browser to know its process');
  return browser.id;
}
