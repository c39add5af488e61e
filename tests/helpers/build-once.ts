import { execFileSync } from 'node:child_process';
import { findChromium } from './chromium.ts';

/** Before everything: a browser is there, and command and player are built from the present source.
 *  `SKIP_BUILD=1` leaves both out while working on one unit test. */
export default function setup(): void {
  if (process.env.SKIP_BUILD === '1') return;
  process.env.CHROMIUM = findChromium();
  for (const script of ['build:command', 'build:player']) {
    execFileSync('npm', ['run', '--silent', script], { stdio: ['ignore', 'ignore', 'inherit'] });
  }
}
