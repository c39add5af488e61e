import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Job } from '../../engine/model/job.ts';
import { benchTree, treeOf, walk } from '../helpers/bench.ts';
import { takeInByKeys } from './helpers/job-files.ts';
import { putOnBench } from './helpers/put-on-bench.ts';
import { showTrees } from './helpers/show-trees.ts';
import { standsAt } from './helpers/stands-at.ts';
import { storedEntries } from './helpers/stored-entries.ts';
import { usePlayer, useRoom } from './helpers/use-player.ts';
import { unopened, walkByKeys } from './helpers/walk-by-keys.ts';

const openRoom = usePlayer();
const tree = treeOf(readFileSync('tests/browser/look-tree.md', 'utf8'), 'look');

/** Sets a mark if anything ever takes it for markup. */
const burning = '<img src=x onerror="globalThis.burnt = true"><script>globalThis.burnt = true</script>';
const odd = '🔥👩‍🔧 ‮backwards ٣٫٣ ½ "quotes" \\ {{x}} `x` %s';
const long = 'x'.repeat(10_000);

const absurd = [
  ...[burning, odd, long, '🔌', '1e999', '9'.repeat(10_000), 'NaN', '-', '--5', '4.9.9', '5 6', '\u0000'],
  ...['4..', '± 5', '٣', 'null', '__proto__', '5; drop', '= 5', 'v5 = 5', 'done'],
];

const open = [
  'open: Board 7; A. Owner; black screen',
  'bus := 33.3',
  'cpu := single-rail',
  'yes',
  'acknowledge',
];
const rails = [...open, 'done'];
const code = [...rails, 'v5 = 4.6', 'm12 = -12', 'r_gnd = 1.2k'];
const proof = [...rails, 'v5 = 5', 'm12 = -12', 'r_gnd = 1k', 'acknowledge', 'clk = 0', 'remedied: Y1'];

/** Whether markup in what somebody typed was ever taken for markup. */
const isBurnt = (page: Page): Promise<boolean> =>
  page.evaluate(() => 'burnt' in globalThis || document.querySelector('#app :is(img, script)') !== null);

const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth));

/** Puts a text into the field that has the focus, in place of what stands there, and presses Enter twice. */
async function enter(page: Page, text: string): Promise<string> {
  await page.keyboard.press('Control+A');
  await page.keyboard.press('Delete');
  await page.keyboard.insertText(text);
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  return page.evaluate(() => (document.activeElement as HTMLInputElement).value);
}

/** Everything absurd is refused in the field that has the focus: with words, without an entry, and it stays there. */
async function refusesAll(page: Page, describedIn: string): Promise<void> {
  const before = await storedEntries(page);
  const line = page.locator(`${describedIn} .understanding`);
  for (const text of absurd) {
    const stands = await enter(page, text);
    const said = (await line.textContent()) ?? '';
    expect({ text, said }).toEqual({ text, said: expect.stringMatching(/^Not taken\. .{8}/) });
    expect(stands).toBe(text);
    expect(said.length).toBeLessThan(400);
  }
  expect(await tooWide(page)).toBe(0);
  for (const text of ['', '   ']) {
    await enter(page, text);
    expect(await page.locator(describedIn).textContent()).not.toContain('Not taken');
  }
  expect(await page.locator('.notice').count()).toBe(0);
  expect(await storedEntries(page)).toEqual(before);
  expect(await isBurnt(page)).toBe(false);
}

describe('a field for values refuses everything absurd and keeps it, and Enter enters nothing:', () => {
  const fields: Readonly<Record<string, readonly string[]>> = {
    'a setting with a unit': open.slice(0, 1),
    'a setting with choices': open.slice(0, 2),
    'a reading with a scale': rails,
    'a reading with codes': code,
    'a reading with choices': [...code, 'code = 05'],
    'a proof': proof,
  };
  test.each(Object.entries(fields))('%s', async (_name, answers) => {
    const room = await openRoom();
    const session = walk(tree, ...answers);
    await putOnBench(room, 'absurd', session);
    await standsAt(room.page, session);
    await refusesAll(room.page, '.desk');
    await standsAt(room.page, session);
  });

  test('the retake of a reading', async () => {
    const room = await openRoom();
    await putOnBench(room, 'absurd', walk(tree, ...code));
    await room.page.getByRole('button', { name: /^Retake 5 V at the slot/ }).click();
    await refusesAll(room.page, 'dialog');
  });

  test('the change of a setting', async () => {
    const room = await openRoom();
    await putOnBench(room, 'absurd', walk(tree, ...rails));
    await room.page.keyboard.press('Alt+S');
    await room.page.getByRole('button', { name: /^Change Bus/ }).click();
    await refusesAll(room.page, 'dialog');
  });
});

describe('a field for words', () => {
  test('takes markup, emoji and odd letters as they are typed and shows them as text everywhere', async () => {
    const { page, url } = await openRoom({ prepare: (context) => showTrees(context, benchTree()) });
    const words = burning.replaceAll(';', '');
    const session = await walkByKeys(page, unopened(benchTree()), [
      `open: ${words}; ${odd}; ${words}`,
      'bus := 33',
      'cpu := single-rail',
      'yes',
      'acknowledge',
      `cannot read: ${words}`,
      `note: ${words}`,
      `todo: ${odd}`,
      'v5 = 1',
      `cannot read: ${odd}`,
      `decline: ${words}`,
      'go clock',
      'acknowledge',
      'cpu_clk = 3',
      `remedied: ${odd}; ${words.replaceAll('=', '')} = ${odd}`,
      'cpu_clk = 33',
      'post_code = runs',
      'v5 = 5',
      `close: ${words}`,
    ]);
    const shown = async () => (await page.locator('#app').textContent()) ?? '';

    await page.getByText('for the bench').click();
    await page.getByRole('heading', { name: 'Every reading' }).waitFor();
    expect(await shown()).toContain(words);
    expect(await isBurnt(page)).toBe(false);
    await page.goto(`${url}#/`);
    await page.getByText('Closed', { exact: true }).click();
    expect(await shown()).toContain(words);
    expect(await isBurnt(page)).toBe(false);
    expect(session.entries[0]).toMatchObject({ board: words, owner: odd, story: words });
  });

  test.each([360, 1440])('holds 10,000 letters without making a page of %i px wider', async (width) => {
    const room = await openRoom({ viewport: { width, height: 800 } });
    const { page, url } = room;
    const some = 'y'.repeat(1000);
    const way = [`open: ${long}; ${some}; ${some}`, ...proof.slice(1, -1), `note: ${some}`, `todo: ${some}`];
    await putOnBench(room, 'long', walk(tree, ...way, `remedied: ${some}; ${some} = ${some}`));
    const places = { '/job/long': some, '/': long, '/job/long/record': long };
    for (const [place, words] of Object.entries(places)) {
      await page.goto(`${url}#${place}`);
      await page.getByText(words).first().waitFor({ state: 'attached' });
      await page.evaluate(() => {
        for (const ledger of document.querySelectorAll('details')) ledger.open = true;
      });
      expect({ place, tooWide: await tooWide(page) }).toEqual({ place, tooWide: 0 });
    }
  });

  test.each([
    ['a note', 'Alt+N'],
    ['open work', 'Alt+W'],
    ['the reason why something cannot be read', 'Alt+C'],
  ])('enters nothing for %s while it is empty or blank', async (_name, key) => {
    const room = await openRoom();
    const { page } = room;
    const session = walk(tree, ...rails);
    await putOnBench(room, 'blank', session);
    await standsAt(page, session);
    await page.keyboard.press(key);
    const sheet = page.getByRole('dialog');
    await sheet.waitFor();
    for (const text of ['', '    ']) {
      await enter(page, text);
      expect(await sheet.locator('.action-main').isDisabled()).toBe(true);
    }
    await page.keyboard.press('Escape');
    await standsAt(page, session);
    expect(await storedEntries(page)).toEqual(session.entries);
  });

  test('for the symptom says so when nothing has its words, and Enter goes nowhere', async () => {
    const room = await openRoom();
    const { page, url } = room;
    await page.goto(`${url}#/symptoms`);
    await page.getByText(/^(One fits|\d+ fit)/).waitFor();
    for (const text of [burning, odd, long, '.*', '\\']) {
      await enter(page, text);
      await page.getByText('No symptom here has these words').waitFor();
      expect(page.url()).toBe(`${url}#/symptoms`);
      expect(await tooWide(page)).toBe(0);
    }
    expect(await isBurnt(page)).toBe(false);
  });

  test('for the step to go to says so when nothing has its words, and Enter goes nowhere', async () => {
    const room = await openRoom();
    const { page } = room;
    const session = walk(tree, ...rails);
    await putOnBench(room, 'nowhere', session);
    await standsAt(page, session);
    await page.keyboard.press('Alt+M');
    await page.getByRole('button', { name: 'Go on at another step' }).press('Enter');
    await page.getByLabel('Step', { exact: true }).waitFor();
    for (const text of [burning, odd, long, '.*', '\\']) {
      await enter(page, text);
      await page.getByText('No step has these words').waitFor();
      expect(await page.getByRole('dialog').getByRole('listitem').count()).toBe(0);
    }
    await page.keyboard.press('Escape');
    await standsAt(page, session);
    expect(await storedEntries(page)).toEqual(session.entries);
    expect(await isBurnt(page)).toBe(false);
  });

  test('for the board opens no job while it is empty or blank', async () => {
    const { page, url } = await openRoom();
    await page.goto(`${url}#/open/no-post-586`);
    await page.getByLabel('Which board is it?').waitFor();
    for (const text of ['', '   ']) await enter(page, text);
    expect(page.url()).toBe(`${url}#/open/no-post-586`);
    expect(await page.getByRole('button', { name: 'Put it on the bench' }).isDisabled()).toBe(true);
  });
});

describe('a stray Enter', () => {
  test('held down or pressed twice takes one step and never acknowledges the warning behind it', async () => {
    const room = await openRoom();
    const { page } = room;
    await putOnBench(room, 'held', walk(tree, ...open.slice(0, 3)));
    const warning = walk(tree, ...open.slice(0, 4));
    await page.clock.runFor(400);
    await page.keyboard.down('Enter');
    await page.keyboard.down('Enter');
    await standsAt(page, warning);
    for (let held = 0; held < 5; held += 1) {
      await page.clock.runFor(400);
      await page.keyboard.down('Enter');
    }
    await page.keyboard.up('Enter');
    await standsAt(page, warning);
    expect((await storedEntries(page)).length).toBe(warning.entries.length);
  });

  test('right after a step with a field does not take the step that follows', async () => {
    const room = await openRoom();
    const { page } = room;
    const last = walk(tree, ...open.slice(0, 2));
    await putOnBench(room, 'twice', last);
    await standsAt(page, last);
    await page.keyboard.type('single-rail');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    const symptom = walk(tree, ...open.slice(0, 3));
    await standsAt(page, symptom);
    await page.keyboard.press('Enter');
    await standsAt(page, symptom);
    expect((await storedEntries(page)).length).toBe(symptom.entries.length);
  });
});

describe('a file that is no job', () => {
  const room = useRoom();
  const session = walk(tree, ...rails);
  const job: Job = {
    format: 1,
    kind: 'job',
    id: 'whole',
    tree,
    laterTrees: [],
    board: null,
    entries: session.entries,
  };
  const whole = JSON.stringify(job);
  const changed = (change: (job: Record<string, unknown>) => void): string => {
    const copy = { ...JSON.parse(whole), id: 'other' };
    change(copy);
    return JSON.stringify(copy);
  };
  const files: Readonly<Record<string, string>> = {
    'an empty file': '',
    'a file of zeros': '\u0000'.repeat(4000),
    'a picture': '\u0089PNG\r\n\u001a\n\u0000\u0000',
    'a page of markup': burning,
    'a truncated job': whole.slice(0, whole.length / 2),
    'a list': '[]',
    nothing: 'null',
    'a number': '1e999',
    'a file of another program': '{"name":"deadboard","version":"0.1.0","dependencies":{}}',
    'a job of a later format': changed((copy) => Object.assign(copy, { format: 2 })),
    'a job without entries': changed((copy) => delete copy.entries),
    'a job without a tree': changed((copy) => delete copy.tree),
    'a job with an entry of no kind': changed((copy) =>
      Object.assign(copy, { entries: [{ kind: 'burnt' }] }),
    ),
    'a job that was never opened': changed((copy) =>
      Object.assign(copy, { entries: session.entries.slice(1) }),
    ),
    'a job whose tree has no sections': changed(({ tree }) =>
      Object.assign(tree as object, { sections: [] }),
    ),
    'a job whose machine leads nowhere': changed(({ tree }) =>
      Object.assign(tree as object, { machine: { id: 'x', initial: 's-gone', states: {} } }),
    ),
    'a deep file': '['.repeat(100_000),
  };

  beforeAll(async () => {
    await putOnBench(room(), 'whole', session);
  });

  test.each(Object.entries(files))('is refused with words and changes nothing: %s', async (name, text) => {
    const { page, url } = room();
    await page.goto(`${url}#/`);
    const said = await takeInByKeys(page, `${name}.json`, text);
    expect(said).toMatch(
      new RegExp(`^"${name}\\.json" was not taken in: .{10,300}\\. Nothing on the bench changed$`),
    );
    expect(await page.getByRole('listitem').count()).toBe(1);
    expect(await storedEntries(page, 'whole')).toEqual(session.entries);
    expect(await isBurnt(page)).toBe(false);
  });

  test('but a job with markup in every text is taken in and shows it as text', async () => {
    const { page, url } = await openRoom();
    const { hostile, changed: texts } = burningJob(job);
    expect(texts).toBeGreaterThan(50);
    await page.goto(`${url}#/`);
    const said = await takeInByKeys(page, 'hostile.json', JSON.stringify(hostile));
    expect(said).toContain('is on the bench');
    await page.goto(`${url}#/job/whole`);
    await page.getByRole('heading', { level: 1, name: burning }).waitFor();
    expect(await isBurnt(page)).toBe(false);
    expect(await page.locator('a[href^="javascript"]').count()).toBe(0);
  });
});

/** A job in whose tree every text that a person reads is markup, and every address a script. */
function burningJob(job: Job): { readonly hostile: Job; readonly changed: number } {
  const named = ['is', 'title', 'symptom', 'means'];
  const prose = ['text', 'code', 'preformatted'];
  let changed = 0;
  const tree = JSON.parse(JSON.stringify(job.tree), (key, value) => {
    const burns = named.includes(key) && typeof value === 'string';
    if (burns || prose.includes(value?.type) || value?.type === 'link') changed += 1;
    if (burns) return burning;
    if (value?.type === 'link') return { ...value, url: 'javascript:globalThis.burnt=true' };
    return prose.includes(value?.type) ? { ...value, value: burning } : value;
  });
  return { hostile: { ...job, tree }, changed };
}
