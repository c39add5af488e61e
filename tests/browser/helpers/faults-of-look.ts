import { axeViolations } from './axe-violations.ts';
import { layoutFaults } from './layout-faults.ts';
import { type Look, showLook } from './show-look.ts';
import type { Room } from './use-player.ts';

/** Height of a phone, a tablet and a bench screen of this width, in px. */
const heights: Readonly<Record<number, number>> = { 360: 740, 820: 1180 };

/** What is wrong with a screen at this width: how it is laid out, and what axe finds by day and by night. */
export async function faultsOfLook(room: Room, look: Look, width: number) {
  const { page } = room;
  await page.setViewportSize({ width, height: heights[width] ?? 900 });
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await showLook(room, look);
  const light = await axeViolations(page, 'everything');
  const layout = await layoutFaults(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await axeViolations(page, 'colours');
  return { layout, light, dark };
}
