import { layoutFaults } from './layout-faults.ts';
import { type Look, showLook } from './show-look.ts';
import type { Room } from './use-player.ts';

/** What is wrong with how screens are laid out on the smallest phone with big letters, each fault after its screen's name. */
export async function faultsWithBigLetters(room: Room, looks: readonly Look[]): Promise<readonly string[]> {
  const { page, url } = room;
  await page.setViewportSize({ width: 360, height: 740 });
  await page.evaluate(() => localStorage.setItem('deadboard.type', 'big'));
  await page.goto('about:blank');
  await page.goto(url);
  const faults: string[] = [];
  for (const look of looks) {
    await showLook(room, look);
    faults.push(...(await layoutFaults(page)).map((fault) => `${look.name}: ${fault}`));
  }
  const isBig = await page.evaluate(() => document.documentElement.dataset.type === 'big');
  if (!isBig) faults.push('the letters are not big');
  await page.evaluate(() => localStorage.removeItem('deadboard.type'));
  await page.goto('about:blank');
  return faults;
}
