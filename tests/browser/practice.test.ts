import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { codeOfPlan, type DrillManner, planDrill } from '../../engine/practice/index.ts';
import { benchTree } from '../helpers/bench.ts';
import { shippedTrees } from '../helpers/shipped-trees.ts';
import { faultsOfLook } from './helpers/faults-of-look.ts';
import { faultsWithBigLetters } from './helpers/faults-with-big-letters.ts';
import { tabAndPress, tabTo } from './helpers/keyboard.ts';
import type { Look } from './helpers/show-look.ts';
import { showTrees } from './helpers/show-trees.ts';
import { type Room, usePlayer, useRoom } from './helpers/use-player.ts';

const tree = benchTree();
const real = shippedTrees.find(({ id }) => id === 'no-post-586')?.tree as CompiledTree;
const drillCode = (
  of: CompiledTree,
  fault: string,
  manner: DrillManner = 'free',
  lacking: readonly string[] = [],
) => codeOfPlan(planDrill(of, { seed: 11, manner, fault, lacking }));

const heading = (page: Page, name: string | RegExp) =>
  page.getByRole('heading', { level: 1, name }).waitFor();
const main = (page: Page) => page.locator('.desk .action-main');

/** Enter, once the step stands long enough to take it. */
async function enter(page: Page): Promise<void> {
  await page.clock.runFor(500);
  await page.keyboard.press('Enter');
}

/** Narrows the list to one check and takes it, by keyboard. */
async function pick(page: Page, words: string, name: string | RegExp): Promise<void> {
  await page.getByRole('textbox').fill(words);
  await page.keyboard.press('Enter');
  await heading(page, name);
}

async function measure(page: Page, words: string, name: string | RegExp): Promise<string> {
  await pick(page, words, name);
  await enter(page);
  await page.locator('.instrument-face').waitFor();
  return (await page.locator('.instrument-face .figure').first().textContent()) ?? '';
}

/** Names a fault and reads its whole proof. */
async function name(page: Page, words: string, fault: string): Promise<void> {
  await page.keyboard.press('Alt+F');
  await heading(page, 'What is wrong with this board?');
  await pick(page, words, fault);
  await enter(page);
  await page.locator('.proof').waitFor();
  while ((await page.locator('[aria-current="step"]').count()) > 0) await enter(page);
}

describe('practice', () => {
  const openRoom = usePlayer();

  test('plays one drill to its debrief by keyboard: over a closed page, a hint, a failed proof and a good one', async () => {
    const { page, context, url } = await openRoom({ prepare: (one) => showTrees(one, tree) });
    const code = drillCode(tree, 'no_power_good');
    await tabAndPress(page, 'Practise');
    await heading(page, 'Practise');
    await tabTo(page, 'A trainer gave me a code');
    await page.keyboard.type(code);
    await page.keyboard.press('Enter');
    await heading(page, tree.symptom);

    await pick(page, '5 V', '5 V at the slot');
    await page.keyboard.press('4');
    await expect.poll(() => page.locator('.option[aria-pressed="true"]').count()).toBe(1);
    await page.keyboard.press('3');
    await enter(page);
    await page.getByText('You said "good", and so it is, as it should be').waitFor();
    await enter(page);
    await heading(page, 'What do you check next?');

    await page.close();
    const later = await context.newPage();
    await later.goto(`${url}#/practise`);
    await tabAndPress(later, tree.title);
    await heading(later, 'What do you check next?');
    await later.getByText('2 minutes').first().waitFor();
    expect(await later.locator('.check-taken').count()).toBe(1);

    await later.keyboard.press('Alt+H');
    await later.getByText('It costs 5 minutes of bench time').waitFor();
    await tabAndPress(later, 'Take it');
    await later
      .getByText(/^Measure next|likeliest|most likely/)
      .first()
      .waitFor();
    await later.keyboard.press('Escape');

    expect(await measure(later, 'power-good', 'Power-good, one second after switch-on')).toMatch(/V$/);
    await later.keyboard.press('1');
    await later.getByText(/You said "low", and so it is/).waitFor();
    await enter(later);
    await name(later, 'crystal', 'The crystal is cracked');
    await heading(later, 'That was not the cause');
    await enter(later);
    await name(later, 'never raises', 'The supply never raises power-good');
    await heading(later, 'Found, and proven');
    await enter(later);

    await heading(later, /^Found after \d+ minutes$/);
    await later.getByText('The supply never raises power-good').first().waitFor();
    expect(await later.getByRole('img', { name: /^Suspects over \d+ minutes/ }).count()).toBe(1);
    const rows = await later.locator('.steps-table tbody th').allTextContents();
    expect(rows.map((row) => row.replace(/You said.*$/, '').replaceAll('\u00a0', ' '))).toEqual([
      '5 V at the slot',
      expect.stringMatching(/^Hint\. /),
      'Power-good, one second after switch-on',
      'Named: The crystal is cracked',
      'Named: The supply never raises power-good',
    ]);
    await later.getByText('You took one hint.').waitFor();
    await later.getByText('What you said before measuring came true 1 of 1 times.').waitFor();

    await tabTo(later, 'Your name, for the result');
    await later.keyboard.type('Ada');
    const download = later.waitForEvent('download');
    await later.keyboard.press('Enter');
    const result = JSON.parse(await readFile(await (await download).path(), 'utf8'));
    expect(result).toMatchObject({
      kind: 'drill-result',
      name: 'Ada',
      code,
      outcome: 'found',
      rightAtFirst: false,
    });

    await later.goto(`${url}#/practise`);
    await later.reload();
    await later.getByRole('row', { name: new RegExp(`^${tree.title} 1 0 0`) }).waitFor();
  });

  test('lays the same board out for everybody who has the link', async () => {
    const code = drillCode(real, 'crystal');
    const shown: string[] = [];
    for (const _ of [1, 2]) {
      const { page, url } = await openRoom();
      await page.goto(`${url}#/practise/${code}`);
      await heading(page, real.symptom);
      shown.push(await measure(page, 'jumpers and switches', /^Jumpers and switches/));
      await page.close();
    }
    expect(shown[0]).toBe(shown[1]);
  });

  test('lets a point of the board be pressed on its picture', async () => {
    const { page, url } = await openRoom();
    await page.goto(`${url}#/practise/${drillCode(real, 'crystal')}`);
    const picture = page.getByRole('img', { name: /^component side, with \d+ points/ });
    await picture.waitFor();
    const all = await page.locator('.check-row').count();
    await page.locator('.spot-mark').first().click();
    await page.locator('.spot, .instrument-face, .desk .action-main').first().waitFor();
    const picked = await page.locator('.spot').count();
    if (picked > 0) expect(await page.locator('.check-row').count()).toBeLessThan(all);
    else expect(await main(page).textContent()).toMatch(/easure/);
  });
});

const codes = {
  free: drillCode(real, 'crystal'),
  guided: drillCode(real, 'crystal', 'guided'),
  bare: drillCode(tree, 'no_power_good'),
  without: drillCode(tree, 'crystal', 'free', ['scope']),
  spent: drillCode(tree, 'bad_supply'),
};
const onDrill = (what: string, code: string, act?: (page: Page) => Promise<void>): Look => ({
  name: what,
  place: `/practise/${code}`,
  ...(act && {
    act: async (page: Page) => {
      await page.locator('.check-row').first().waitFor();
      await act(page);
    },
  }),
});
const toCheck = (words: string) => async (page: Page) => {
  await page.getByRole('textbox').fill(words);
  await page.locator('.check-row').first().click();
  await main(page).waitFor();
};
const pressMain = async (page: Page) => {
  await page.clock.runFor(500);
  await main(page).click();
};

const looks: readonly Look[] = [
  { name: 'choosing a board', place: '/practise' },
  {
    name: 'what a trainer hands out',
    place: '/practise',
    act: async (page) => {
      await page.getByText('For a trainer').click();
      await page.locator('.trainer input').first().click();
      await page.locator('.fault-choice button').first().click();
      await page.locator('.sealed-code').waitFor();
    },
  },
  { name: 'a code that is none', place: '/practise/hello' },
  onDrill('the board', codes.free, async () => {}),
  onDrill('the board, narrowed', codes.free, (page) => page.getByRole('textbox').fill('clock')),
  onDrill('the board, along the tree', codes.guided, async () => {}),
  onDrill('a board without a tool', codes.without, async () => {}),
  onDrill('a check with what stands before it', codes.free, toCheck('5 V at a slot')),
  onDrill('a check with its places', codes.free, toCheck('Clock at the CPU')),
  onDrill('what the instrument shows', codes.bare, async (page) => {
    await toCheck('power-good')(page);
    await pressMain(page);
    await page.locator('.instrument-face').waitFor();
  }),
  onDrill('a band that was judged', codes.bare, async (page) => {
    await toCheck('power-good')(page);
    await pressMain(page);
    await page.locator('.instrument-face').waitFor();
    await page.locator('.option').first().click();
    await page.locator('.gauge').waitFor();
  }),
  onDrill('a hint before it is taken', codes.bare, async (page) => {
    await page.keyboard.press('Alt+H');
    await page.getByRole('dialog').waitFor();
  }),
  onDrill('giving up', codes.bare, async (page) => {
    await page.keyboard.press('Alt+G');
    await page.getByRole('dialog').waitFor();
  }),
  onDrill('naming the fault', codes.free, async (page) => {
    await page.keyboard.press('Alt+F');
    await page.getByText('None of these').waitFor();
  }),
  onDrill('a remedy', codes.free, async (page) => {
    await page.keyboard.press('Alt+F');
    await page.locator('.check-row').first().click();
    await main(page).waitFor();
  }),
  { name: 'no debrief', place: `/practise/${codes.free}/debrief` },
  { name: 'a debrief', place: `/practise/${codes.spent}/debrief` },
];

describe('every screen of practice', () => {
  const room = useRoom({
    prepare: async (context) => {
      await showTrees(context, tree, real);
    },
  });

  /** Plays a board to its end, so that it has a debrief; keeps it for all looks that follow. */
  async function spend({ page, url }: Room): Promise<void> {
    await page.goto(`${url}#/practise/${codes.spent}`);
    await heading(page, /./);
    if ((await page.getByRole('heading', { name: /^Given up/ }).count()) > 0) return;
    await toCheck('power-good')(page);
    await page.getByRole('button', { name: 'Measure all the same' }).click();
    await page.locator('.instrument-face').waitFor();
    await pressMain(page);
    await toCheck('5 V')(page);
    await pressMain(page);
    await page.locator('.instrument-face').waitFor();
    await page.keyboard.press('Alt+G');
    await page.getByRole('button', { name: 'Give up and show it' }).click();
    await heading(page, /^Given up/);
  }

  test.each([360, 820, 1440])(
    'has its layout right at %i px and no axe violation, light and dark',
    async (width) => {
      await room().page.setViewportSize({ width, height: 900 });
      await spend(room());
      const found: Record<string, unknown> = {};
      for (const look of looks) found[look.name] = await faultsOfLook(room(), look, width);
      expect(found).toEqual(
        Object.fromEntries(looks.map((look) => [look.name, { layout: [], light: [], dark: [] }])),
      );
    },
  );

  test('keeps its layout at 360 px with big letters', async () => {
    expect(await faultsWithBigLetters(room(), looks)).toEqual([]);
  });
});
