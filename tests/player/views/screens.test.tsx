// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { createApp } from '../../../player/models/app.ts';
import { BenchScreen } from '../../../player/views/bench/bench-screen.tsx';
import { OpeningScreen } from '../../../player/views/opening/opening-screen.tsx';
import { RecordScreen } from '../../../player/views/record/record-screen.tsx';
import { SymptomsScreen } from '../../../player/views/symptoms/symptoms-screen.tsx';
import { benchTree, opened } from '../../helpers/bench.ts';
import { benchPorts } from '../helpers/bench-ports.ts';
import { putOnBench } from '../helpers/put-on-bench.ts';
import { stage } from '../helpers/stage.ts';

const tree = benchTree();
const other = {
  ...tree,
  id: 'beeps',
  symptom: 'It beeps and shows nothing',
  title: 'Memory not found',
  boards: ['286'],
};
let page: ReturnType<typeof stage>;
const text = (what: string) => page.text(what);

beforeEach(() => {
  page = stage();
});
afterEach(() => {
  page.strike();
});

describe('<BenchScreen>', () => {
  test('says what this is and that the bench is clear', async () => {
    await page.draw(<BenchScreen app={createApp(benchPorts(tree))} />);
    expect(text('h1')).toContain('proven repair');
    expect(text('.blank-title')).toBe('The bench is clear');
  });

  test('shows a card for each job', async () => {
    const ports = benchPorts(tree);
    await putOnBench(ports, tree, ...opened, 'nothing', '0.1', 'todo: order a supply');
    await page.draw(<BenchScreen app={createApp(ports)} />);
    expect(text('.card-link')).toBe('Board 7');
    expect(text('.card-finding')).toBe('5 V at the slot: 0.1 V, none');
    expect(text('.card-todo')).toContain('order a supply');
  });

  test('says what to do when the browser keeps no data', async () => {
    const ports = benchPorts(tree);
    ports.store.failWith({ kind: 'unavailable', detail: 'insecure' });
    await page.draw(<BenchScreen app={createApp(ports)} />);
    expect(text('[role="alert"]')).toContain('use a normal one');
  });
});

describe('<SymptomsScreen>', () => {
  test('narrows the list while typing, and takes the last one left with Enter', async () => {
    const ports = benchPorts(tree, other);
    await page.draw(<SymptomsScreen app={createApp(ports)} />);
    expect(page.all('.card')).toHaveLength(2);
    await page.type('#symptom', 'beep');
    expect(text('.card-link')).toBe('It beeps and shows nothing');
    await page.submit('form');
    expect(ports.browser.place()).toBe('/open/beeps');
  });

  test('leaves Enter alone while more than one fits', async () => {
    const ports = benchPorts(tree, other);
    await page.draw(<SymptomsScreen app={createApp(ports)} />);
    await page.submit('form');
    expect(ports.browser.place()).toBe('/');
  });

  test('says that jobs on the bench go on when the list cannot be fetched', async () => {
    const ports = benchPorts();
    await page.draw(
      <SymptomsScreen
        app={createApp({
          ...ports,
          trees: { ...ports.trees, list: async () => ({ ok: false, why: 'no answer' }) },
        })}
      />,
    );
    expect(text('[role="alert"]')).toContain('each keeps its own tree');
  });
});

describe('<OpeningScreen>', () => {
  test('puts a job on the bench once the board has a name', async () => {
    const ports = benchPorts(tree);
    await page.draw(<OpeningScreen app={createApp(ports)} tree={tree.id} />);
    await page.submit('form');
    expect(await ports.store.list()).toEqual({ ok: true, value: [] });
    await page.type('.words-input', ' Board 9 ');
    await page.submit('form');
    const list = await ports.store.list();
    expect(list.ok && list.value.map(({ board, entries }) => [board, entries])).toEqual([['Board 9', 1]]);
    expect(ports.browser.place()).toBe('/job/job1');
  });

  test('keeps what was written when the store refuses', async () => {
    const ports = benchPorts(tree);
    await page.draw(<OpeningScreen app={createApp(ports)} tree={tree.id} />);
    await page.type('.words-input', 'Board 9');
    ports.store.failWith({ kind: 'full' });
    await page.submit('form');
    expect(text('[role="alert"]')).toContain('no room left');
    expect(page.find<HTMLInputElement>('.words-input').value).toBe('Board 9');
  });
});

describe('<RecordScreen>', () => {
  const mended = [...opened, 'nothing', '5', '0.1', 'remedied: C3; bead = 0.40 EUR', '4.9', 'runs'];

  test('tells the owner what was wrong, what went in and what proves it', async () => {
    const ports = benchPorts(tree);
    await putOnBench(ports, tree, ...mended, 'close: keep the vents free');
    await page.draw(<RecordScreen app={createApp(ports)} id="job" />);
    const record = text('.record') ?? '';
    for (const words of [
      'Board 7',
      'mended',
      'never raises power-good (C3)',
      'bead: 0.40 EUR',
      '4.9',
      'keep the vents free',
    ]) {
      expect(record).toContain(words);
    }
    expect(record).not.toContain('Every reading');
  });

  test('gives the bench every reading, and saves what it shows', async () => {
    const ports = benchPorts(tree);
    await putOnBench(ports, tree, ...mended);
    await page.draw(<RecordScreen app={createApp(ports)} id="job" />);
    await page.click('.record-tools input', 1);
    expect(text('.every-reading')).toContain('0.1');
    await page.click('.record-save button', 0);
    expect(ports.files.saved[0]?.text).toContain('## Readings');
    await page.click('.action-main');
    expect(ports.browser.printed).toBe(1);
  });
});
