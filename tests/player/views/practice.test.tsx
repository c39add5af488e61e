// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createApp } from '../../../player/models/app.ts';
import { BenchScreen } from '../../../player/views/bench/bench-screen.tsx';
import { DebriefScreen } from '../../../player/views/practice/debrief-screen.tsx';
import { DrillScreen } from '../../../player/views/practice/drill-screen.tsx';
import { PractiseScreen } from '../../../player/views/practice/practise-screen.tsx';
import { benchTree } from '../../helpers/bench.ts';
import { benchPorts, treesOf } from '../helpers/bench-ports.ts';
import { benchSheet } from '../helpers/bench-sheet.ts';
import { drillCode } from '../helpers/drill-code.ts';
import { stage } from '../helpers/stage.ts';

const tree = benchTree();
const code = drillCode(tree, 'crystal');
let page: ReturnType<typeof stage>;
const text = (what: string) => page.text(what);
const button = (name: string) => {
  const found = page.all<HTMLElement>('button').find((one) => one.textContent?.startsWith(name));
  if (found === undefined) throw new Error(`expected a button "${name}"`);
  found.click();
  return page.settle();
};

/** A second press of the main action within its settling time belongs to the step before. */
const settled = () => new Promise((resolve) => setTimeout(resolve, 400));

const act = async () => {
  await settled();
  await page.click('.desk .action-main');
};

const pick = async (name: string) => {
  await page.type('.field-input', name);
  await page.submit('.answer-row');
};

beforeEach(() => {
  page = stage();
});
afterEach(() => {
  page.strike();
});

describe('<PractiseScreen>', () => {
  test('is behind a door of its own on the first screen', async () => {
    await page.draw(<BenchScreen app={createApp(benchPorts(tree))} />);
    expect(page.texts('.door')).toContain('Practise');
  });

  test('lays a board out that nobody knows', async () => {
    const ports = benchPorts(tree);
    await page.draw(<PractiseScreen app={createApp(ports)} />);
    await page.submit('.practise-form');
    expect(ports.browser.place()).toMatch(/^\/practise\/bench-tree:/);
  });

  test('opens the board of a code, and says what is wrong with one that is none', async () => {
    const ports = benchPorts(tree);
    await page.draw(<PractiseScreen app={createApp(ports)} />);
    await page.type('.code-form input', 'nonsense');
    await page.submit('.code-form');
    expect(text('[role="alert"]')).toContain('is no code');
    await page.type('.code-form input', code.toLowerCase());
    await page.submit('.code-form');
    expect(ports.browser.place()).toBe(`/practise/${code}`);
  });

  test('says that there is nothing yet, and where practice is kept', async () => {
    await page.draw(<PractiseScreen app={createApp(benchPorts(tree))} />);
    expect(text('main')).toContain('on this device only');
  });

  test('gives a trainer code and link for a chosen fault, and tells neither in them', async () => {
    const ports = benchPorts(tree);
    await page.draw(<PractiseScreen app={createApp(ports)} />);
    await page.click('.trainer input[type="radio"]');
    await page.click('.fault-choice button', 2);
    const sealed = text('.sealed-code') ?? '';
    expect(page.texts('.sealed-text')[1]).toBe(`http://bench/#/practise/${sealed}`);
    expect(sealed.toLowerCase()).not.toContain('crystal');
    await button('Copy the link');
    expect(ports.browser.copied).toEqual([`http://bench/#/practise/${sealed}`]);
  });
});

describe('<DrillScreen>', () => {
  const drawn = async (of = code, boards = [benchSheet()]) => {
    const ports = { ...benchPorts(tree), trees: treesOf([tree], boards) };
    await page.draw(<DrillScreen app={createApp(ports)} code={of} />);
    return ports;
  };

  test('lays out everything that can be measured, by what it takes', async () => {
    await drawn();
    expect(text('h1')).toBe(tree.symptom);
    expect(page.texts('.check-group')).toEqual(['Power as it is', 'Power on']);
    expect(page.all('.check-row')).toHaveLength(5);
  });

  test('shows what the instrument shows, and the scale once the trainee has judged it', async () => {
    await drawn(drillCode(tree, 'no_power_good'));
    await pick('power-good');
    expect(text('.hazard-warning')).toContain('mains');
    await act();
    expect(text('.instrument-face .figure')).toMatch(/^[0-3]\.?\d*\s?m?V$/);
    expect(page.all('.gauge')).toHaveLength(0);
    expect(text('.beside')).not.toContain('low');
    await page.click('.option', 1);
    expect(text('.judgement')).toContain('You said "good". It is low; it should be');
    expect(page.all('.gauge')).toHaveLength(1);
    await act();
    expect(text('.beside')).toContain('low');
    expect(text('.head-clock')).toContain('2 minutes');
  });

  test('takes what is said before for the judgement', async () => {
    await drawn();
    await pick('clock');
    await page.click('.option', 0);
    await act();
    expect(text('.judgement')).toContain('You said "none", and so it is');
  });

  test('counts a warning that is passed over', async () => {
    const ports = await drawn();
    await pick('clock');
    await button('Measure all the same');
    expect(ports.practice.read(`drill.${code}`)).toContain('"heeded":false');
    expect(ports.practice.read(`drill.${code}`)).toContain('"kind":"hazard"');
  });

  test('asks once before it is given up', async () => {
    const ports = await drawn();
    await button('Give up');
    expect(ports.browser.place()).toBe('/');
    await button('Give up and show it');
    expect(ports.browser.place()).toBe(`/practise/${code}/debrief`);
  });

  test('puts the check that the tree asks in front, where the tree guides', async () => {
    await drawn(drillCode(tree, 'crystal', 'guided'));
    expect(text('.next-check')).toContain('What happened last');
    expect(text('.next-check')).toContain('Ask the owner');
    await page.submit('.answer-row');
    expect(text('h1')).toBe('What happened last');
  });

  test('says why a board cannot be laid out', async () => {
    await drawn('bench-tree:00000');
    expect(text('[role="alert"]')).toContain('cannot be laid out');
  });

  test('comes by a failed proof and a good one to its debrief, which counts it once', async () => {
    const ports = await drawn();
    await pick('clock');
    await act();
    await act();
    for (const [name, end] of [
      ['supply gives', 'Go on measuring'],
      ['crystal', 'What each check was worth'],
    ] as const) {
      await button('Name the fault');
      await pick(name);
      await act();
      while (!page.texts('.desk .action-main').some((words) => words?.startsWith(end))) await act();
      if (end === 'Go on measuring') expect(text('h1')).toBe('That was not the cause');
      await act();
    }
    expect(ports.browser.place()).toBe(`/practise/${code}/debrief`);

    for (let time = 0; time < 2; time += 1) {
      page.strike();
      page = stage();
      await page.draw(<DebriefScreen app={createApp(ports)} code={code} />);
      expect(text('.debrief-verdict')).toContain('The crystal is cracked');
      expect(page.texts('.steps-table tbody tr')).toHaveLength(3);
      expect(page.find('.narrowing svg').getAttribute('aria-label')).toContain('the fault was found');
    }
    await page.type('.debrief-tools input', 'Ada');
    await page.submit('.debrief-tools');
    expect(ports.files.saved[0]?.name).toBe('ada-2031-04-05.drill.json');
    expect(ports.files.saved[0]?.text).toContain('"name": "Ada"');

    page.strike();
    page = stage();
    await page.draw(<PractiseScreen app={createApp(ports)} />);
    expect(page.texts('.figures-table tbody td').slice(0, 3)).toEqual(['1', '0', '0']);
    await button('Clear the counts');
    await button('Clear them');
    expect(page.all('.figures-table tbody tr')).toHaveLength(0);
  });
});

describe('<DebriefScreen>', () => {
  test('says so where there is nothing to look back at', async () => {
    await page.draw(<DebriefScreen app={createApp(benchPorts(tree))} code={code} />);
    expect(text('[role="alert"]')).toContain('no drill with this code');
  });
});
