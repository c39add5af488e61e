import { execFileSync } from 'node:child_process';
import { accessSync, constants } from 'node:fs';
import { type Browser, type BrowserContext, chromium as playwright } from 'playwright-core';

const places = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/opt/google/chrome/chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

const runs = (path: string | undefined): path is string => {
  try {
    accessSync(path ?? '', constants.X_OK);
    return true;
  } catch {
    return false;
  }
};

/** The path of a Chromium; Debian's is installed where that is allowed. */
export function findChromium(): string {
  const found = places.find(runs);
  if (found !== undefined) return found;
  if (process.getuid?.() === 0 && runs('/usr/bin/apt-get')) {
    execFileSync('apt-get', ['update', '-qq'], { stdio: 'ignore' });
    execFileSync('apt-get', ['install', '-y', '-qq', 'chromium'], {
      stdio: 'ignore',
      env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    });
    if (runs('/usr/bin/chromium')) return '/usr/bin/chromium';
  }
  throw new Error(
    'The browser tests need Chromium: install it (Debian: apt-get install chromium) or set CHROMIUM to its path',
  );
}

const flags = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

const options = () => ({
  executablePath: findChromium(),
  headless: true,
  args: [...flags, ...(process.getuid?.() === 0 ? ['--no-sandbox'] : [])],
});

/** A headless browser without network habits of its own. */
export const launchChromium = (): Promise<Browser> => playwright.launch(options());

/** The same with everything it keeps in `folder`, so that it can be started again. */
export const launchChromiumIn = (folder: string): Promise<BrowserContext> =>
  playwright.launchPersistentContext(folder, options());
