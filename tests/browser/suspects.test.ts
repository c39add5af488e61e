import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import type { CompiledBoard } from '../../engine/model/compiled-board.ts';
import { benchTree, opened, walk, walkWith } from '../helpers/bench.ts';
import { faultsOfLook } from './helpers/faults-of-look.ts';
import { faultsWithBigLetters } from './helpers/faults-with-big-letters.ts';
import { putOnBench } from './helpers/put-on-bench.ts';
import { type Look, showLook } from './helpers/show-look.ts';
import { storedEntries } from './helpers/stored-entries.ts';
import { useRoom } from './helpers/use-player.ts';

const tree = benchTree();
const room = useRoom();

/** Walks whose suspects are looked at. */
const walks = {
  'the start': [...opened],
  'a few readings': [...opened, 'nothing', '5'],
  'readings that fit nothing': [...opened, 'nothing', '5', '4.5', 'acknowledge', '70'],
  'a failed proof': [...opened, 'nothing', '5', '4.5', 'acknowledge', '0', 'remedied', '0', 'none'],
  'a detour': [...opened, 'detour cpu_clk', 'acknowledge'],
} satisfies Readonly<Record<string, readonly string[]>>;
const names = Object.keys(walks) as readonly (keyof typeof walks)[];
const placeOf = (name: (typeof names)[number]): string => `/job/suspects${names.indexOf(name)}`;

/** Nothing is on its way any more. */
const ranked = async (page: Page) => {
  await page.locator('.suspect').first().waitFor({ state: 'attached' });
};
const sheet = async (page: Page) => {
  await ranked(page);
  await page.keyboard.press('Alt+U');
  await page.locator('dialog .suspect summary').first().press('Enter');
  await page.locator('dialog .moves').waitFor();
};
const looks: readonly Look[] = names.flatMap((name) => [
  { name, place: placeOf(name), act: ranked },
  { name: `the suspects at ${name}`, place: placeOf(name), act: sheet },
]);

beforeAll(async () => {
  for (const name of names) {
    await putOnBench(room(), `suspects${names.indexOf(name)}`, walk(tree, ...walks[name]));
  }
});

describe.each([360, 820, 1440])('at %i px', (width) => {
  test.each(looks)('$name: the layout is right and axe finds nothing, by day and by night', async (look) => {
    expect(await faultsOfLook(room(), look, width)).toEqual({ layout: [], light: [], dark: [] });
  });
});

test('suspects and detour keep their layout at 360 px with big letters', async () => {
  expect(await faultsWithBigLetters(room(), looks)).toEqual([]);
});

test('the suspects are ranked again after an entry, while the next field is ready', async () => {
  const { page } = room();
  await page.setViewportSize({ width: 1440, height: 900 });
  await putOnBench(room(), 'again', walk(tree, ...opened, 'nothing'));
  await ranked(page);
  const before = await page.locator('.beside .suspects').first().textContent();
  await page.keyboard.type('0,1');
  await page.keyboard.press('Enter');
  await page.waitForFunction(
    () => document.querySelector<HTMLInputElement>('.desk .field-input')?.value === '',
  );
  await page.keyboard.type('4.5');
  expect(await page.locator('.desk .field-input').inputValue()).toBe('4.5');
  await page.waitForFunction(
    (old) => document.querySelector('.beside .suspects')?.textContent !== old,
    before,
  );
  expect(await page.locator('.beside .suspect-name').first().textContent()).toBe('The supply gives no 5 V');
});

test('readings that fit no fault say so above the step, with what to do', async () => {
  const { page } = room();
  await page.setViewportSize({ width: 390, height: 844 });
  await showLook(room(), { name: '', place: placeOf('readings that fit nothing') });
  await page.locator('.guidance').getByText('These readings fit no fault in this tree').waitFor();
  await page.getByRole('button', { name: 'What to do' }).click();
  await page.locator('dialog').getByText('Take the odd one again').waitFor();
});

test('a detour is said above the step, and left with one key', async () => {
  const { page } = room();
  await page.setViewportSize({ width: 1440, height: 900 });
  const session = walk(tree, ...walks['a detour']);
  await putOnBench(room(), 'left', session);
  await page.locator('.guidance [role="status"]').getByText('you left Ask first').waitFor();
  await page.keyboard.press('Alt+T');
  await page.getByRole('heading', { level: 1, name: 'Ask first' }).waitFor();
  expect(await page.locator('.guidance-strip').count()).toBe(0);
  expect((await storedEntries(page, 'left')).at(-1)).toMatchObject({ kind: 'returned' });
});

test('a low phone shows the ring on the picture without scrolling', async () => {
  const { page, url } = room();
  await page.setViewportSize({ width: 360, height: 640 });
  await page.goto(url);
  const fetched = (path: string) => page.evaluate(async (at) => (await fetch(at)).json(), `${url}${path}`);
  const board = (await fetched('boards/dunlin-dn5.json')) as CompiledBoard;
  const points = { ...board.points, v5: (board.points.v5 ?? []).slice(0, 1) };
  const session = walkWith(
    tree,
    { board: { ...board, points, boards: ['486'] }, laterTrees: [] },
    ...opened,
    'nothing',
  );
  await putOnBench(room(), 'pictured', session);
  await page.locator('.ring-touch circle').first().waitFor();
  const [ring, desk] = await Promise.all([
    page.locator('.ring-touch').first().boundingBox(),
    page.locator('.desk').boundingBox(),
  ]);
  expect(await page.evaluate(() => scrollY)).toBe(0);
  expect((ring?.y ?? 0) + (ring?.height ?? 0)).toBeLessThan(desk?.y ?? 0);
});
