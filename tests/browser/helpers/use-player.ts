import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { launchChromium } from '../../helpers/chromium.ts';
import { type Served, servePlayer } from '../../helpers/serve-player.ts';
import { type Trouble, watched } from './watched.ts';

/** A browser of its own memory with the player on its first page. */
export interface Room {
  readonly url: string;
  readonly context: BrowserContext;
  readonly page: Page;
  readonly trouble: Trouble;
}

interface RoomOptions extends BrowserContextOptions {
  /** Before the first page is fetched. */
  readonly prepare?: (context: BrowserContext) => Promise<void>;
  /** What the bench's clock shows when the room is opened. */
  readonly morning?: string;
}

/** When every room is opened: on the day of the walks of `tests/helpers/bench.ts`, so that no test meets midnight. */
export const benchMorning = '2026-03-01T12:00:00Z';

const wide = { width: 1440, height: 900 };

/** One server and one browser for a whole test file, and a room for each test. A test after which a page
 *  has met an error, or asked another machine for anything, has failed. */
export function usePlayer(): (options?: RoomOptions) => Promise<Room> {
  const open = useBrowser();
  const rooms: Room[] = [];

  afterEach(async () => {
    const left = rooms.splice(0);
    await Promise.all(left.map(({ context }) => context.close()));
    expect(left.flatMap(({ trouble }) => trouble)).toEqual([]);
  });

  return async (options) => {
    const room = await open(options);
    rooms.push(room);
    return room;
  };
}

/** One room that all tests of a file share. */
export function useRoom(options?: RoomOptions): () => Room {
  const open = useBrowser();
  let room: Room;

  beforeAll(async () => {
    room = await open(options);
  });

  afterEach(() => {
    expect(room.trouble).toEqual([]);
  });

  return () => room;
}

function useBrowser(): (options?: RoomOptions) => Promise<Room> {
  let served: Served;
  let browser: Browser;

  beforeAll(async () => {
    [served, browser] = await Promise.all([servePlayer(), launchChromium()]);
  });

  afterAll(async () => {
    await browser?.close();
    await served?.close();
  });

  return async ({ prepare, morning = benchMorning, ...options } = {}) => {
    const context = await browser.newContext({ viewport: wide, ...options });
    const trouble = watched(context);
    await context.clock.install({ time: morning });
    await prepare?.(context);
    const page = await context.newPage();
    page.setDefaultTimeout(10_000);
    await page.goto(served.url);
    return { url: served.url, context, page, trouble };
  };
}
