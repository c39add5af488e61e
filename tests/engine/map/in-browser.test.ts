import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { drawMap, layOut, mapOf } from '../../../engine/map/index.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { launchChromium } from '../../helpers/chromium.ts';
import { treeOf } from '../../helpers/random-sections.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const hard = (title: string): CompiledTree =>
  treeOf(
    [
      {
        id: 'a',
        title,
        hazards: [],
        blocks: [],
        kind: 'check',
        readings: [title],
        outcomes: [{ condition: { kind: 'otherwise' }, written: title, target: 'b', remark: [] }],
      },
      { id: 'b', title, hazards: [], blocks: [], kind: 'stop', reason: [] },
    ],
    { title, symptom: title },
  );

const trees: readonly (readonly [string, CompiledTree])[] = [
  ...shippedTrees.map(({ id, tree }) => [id, tree as CompiledTree] as const),
  ['wide letters', hard('MMMWWW@@ %%WM MMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMMM')],
  ['a word without end', hard(`Versorgungsspannungsüberwachungsschaltkreis${'mw'.repeat(40)}`)],
  ['many scripts', hard('電源電圧が規格の範囲内にあることを確認する Проверка питания שלום ελέγξτε')],
  ['signs', hard('→ ≥ 4.75 V ± 5 % … 10 µF “x” – 🔥🔥🔥 AÉÎÕÜ')],
];

describe('a map in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchChromium();
  });
  afterAll(() => browser.close());

  test.each(trees)('keeps every text inside its symbol and on the sheet: %s', async (_name, tree) => {
    const svg = drawMap(await layOut(mapOf(tree)));
    const page = await browser.newPage();
    await page.goto(`data:image/svg+xml;base64,${Buffer.from(svg).toString('base64')}`);
    const found = await page.evaluate(() => {
      const sheet = document.documentElement.getBoundingClientRect();
      const texts = [...document.querySelectorAll('text')];
      const outside = texts.filter((text) => {
        const box = text.getBoundingClientRect();
        const symbol =
          text.parentElement?.querySelector(':scope > .outline')?.getBoundingClientRect() ?? sheet;
        const note = text.closest('.connector') !== null || text.closest('.condition') !== null;
        const frame = note ? sheet : symbol;
        return (
          box.left < frame.left || box.right > frame.right || box.top < frame.top || box.bottom > frame.bottom
        );
      });
      return { texts: texts.length, outside: outside.map((text) => text.textContent) };
    });
    await page.close();
    expect(found.texts).toBeGreaterThan(4);
    expect(found.outside).toEqual([]);
  });
});
