// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Proposals } from '../../../engine/next/proposal.ts';
import type { Session } from '../../../engine/run/index.ts';
import { createApp } from '../../../player/models/app.ts';
import type { RankJob } from '../../../player/models/rank-server.ts';
import { fakeRanker } from '../../../player/ports/fake-ranker.ts';
import { JobScreen } from '../../../player/views/job/job-screen.tsx';
import { benchTree, opened } from '../../helpers/bench.ts';
import { benchPorts } from '../helpers/bench-ports.ts';
import { type Made, madeProposals, madeSuspects } from '../helpers/hand-made-rank.ts';
import { putOnBench } from '../helpers/put-on-bench.ts';
import { stage } from '../helpers/stage.ts';

const tree = benchTree();
let page: ReturnType<typeof stage>;
let made: readonly Made[];
let fits: boolean;
let proposals: (session: Session) => Proposals | null;
let offline: boolean;

/** Ranks as the test says, or does not answer. */
const handMade: RankJob = {
  suspectsOf(session) {
    if (offline) throw new Error('no answer');
    return madeSuspects(session, made, fits);
  },
  proposalsOf: (session) => proposals(session),
};

beforeEach(() => {
  page = stage();
  [fits, offline] = [true, false];
  proposals = () => null;
  made = [
    [
      'crystal',
      0.7,
      [
        ['v5 good', 0.98],
        ['pg good', 4, 7],
        ['post_code none', 0.5],
      ],
    ],
    ['clock_chip', 0.2],
    ['', 0.1],
  ];
});
afterEach(() => page.strike());

async function show(...answers: readonly string[]) {
  const ports = { ...benchPorts(tree), ranker: fakeRanker(handMade) };
  await putOnBench(ports, tree, ...opened, ...answers);
  await page.draw(<JobScreen app={createApp(ports)} id="job" />);
  return ports;
}

const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const texts = (what: string) => page.texts(what).map(plain);
const press = (letter: string) => page.press(letter.toLowerCase(), { altKey: true, code: `Key${letter}` });
const lastEntry = async (ports: Awaited<ReturnType<typeof show>>) => {
  const job = await ports.store.load('job');
  return job.ok ? job.value.entries.at(-1) : null;
};

/** The clock is proposed: it tells the crystal from the clock chip. */
const clockFirst = (session: Session): Proposals =>
  madeProposals(session, [
    {
      reading: 'cpu_clk',
      section: 'clock',
      rate: 1,
      bands: [{ band: 'none', share: 0.7 }],
      parts: [
        { hypothesis: 0, band: 'none' },
        { hypothesis: 1, band: 'slow' },
      ],
    },
  ]);

describe('the suspects beside the work', () => {
  test('stand with their share in words and in numbers, the likeliest first', async () => {
    await show('nothing');
    expect(texts('.beside .suspect summary')).toEqual([
      'The crystal is cracked7 in 10 70 %',
      'The clock chip is dead2 in 10 20 %',
      "None of the tree's faults1 in 10 10 %",
    ]);
    expect(page.all<HTMLElement>('.beside .share-fill').map(({ style }) => style.width)).toEqual([
      '70.0%',
      '20.0%',
      '10.0%',
    ]);
  });

  test('tell on request which readings moved them, and by how much', async () => {
    await show('nothing');
    expect(page.all('.moves')).toEqual([]);
    const details = page.find<HTMLDetailsElement>('.beside .suspect details');
    details.open = true;
    details.dispatchEvent(new Event('toggle'));
    await page.settle();
    expect(texts('.moves h4')).toEqual(['Speaks for it', 'Speaks against it']);
    expect(texts('.moves li')).toEqual([
      'Power-good, one second after switch-on: good×4',
      'Last code on the POST card: none×0.5',
    ]);
    expect(plain(page.text('.moves .hint'))).toBe('1 more reading hardly moved it.');
  });

  test('stand together where two are suspected at once', async () => {
    made = [
      ['crystal clock_chip', 0.9],
      ['', 0.1],
    ];
    await show('nothing');
    expect(texts('.beside .suspect-name')[0]).toBe(
      'The crystal is cracked and The clock chip is dead together',
    );
  });

  test('leave what is ruled out in its list below', async () => {
    await show('nothing', '5');
    expect(texts('.beside .fault-ruled-out')).toEqual(['The supply gives no 5 V5 V at the slot: good']);
  });

  test('say that they could not be fetched, and leave the step as it is', async () => {
    offline = true;
    await show('nothing');
    expect(plain(page.text('.beside .suspects-panel, .beside .ledger .hint'))).toContain(
      'could not be fetched',
    );
    expect(page.text('h1')).toBe('Rails');
  });

  test('are opened over the step with one key', async () => {
    await show('nothing');
    await press('U');
    expect(page.text('dialog h2')).toBe('Suspects');
    expect(page.all('dialog .suspect')).toHaveLength(3);
  });
});

describe('readings that fit no fault', () => {
  beforeEach(() => {
    fits = false;
    made = [
      ['', 0.9],
      ['crystal', 0.1, [['post_code none', 0.01, 5]]],
    ];
  });

  test('are said first of all, and announced', async () => {
    await show('nothing');
    expect(plain(page.text('.guidance [role="status"]'))).toContain(
      'These readings fit no fault in this tree.',
    );
  });

  test('come with what to do: the odd one again, and what speaks against each', async () => {
    await show('nothing');
    expect(texts('.beside .fits-nothing li')[0]).toContain(
      'Take the odd one again: Last code on the POST card, which was none.',
    );
    expect(texts('.beside .suspect-counter')).toEqual(['against it: Last code on the POST card: none ×0.01']);
    await page.click('.beside .fits-nothing .action');
    expect(page.text('dialog h2')).toContain('Last code on the POST card');
  });
});

describe('a check that is quicker than the next of the tree', () => {
  beforeEach(() => {
    proposals = clockFirst;
  });

  test('is offered in one line, with its reason on request', async () => {
    await show('nothing');
    expect(plain(page.text('.beside .proposal p'))).toBe(
      'Quicker from here: CPU clock at the socket (2 min) would tell the crystal is cracked from the clock chip is dead; about 9 minutes left.',
    );
    expect(texts('.beside .proposal dl > div')).toEqual([
      'noneunder the crystal is cracked',
      'slowunder the clock chip is dead',
    ]);
  });

  test('is taken with one key, and the detour left with another', async () => {
    const ports = await show('nothing');
    await press('Q');
    expect(await lastEntry(ports)).toMatchObject({ kind: 'detoured', section: 'clock', reading: 'cpu_clk' });
    expect(plain(page.text('.guidance [role="status"]'))).toContain('Detour: you left Rails');
    await press('T');
    expect(await lastEntry(ports)).toMatchObject({ kind: 'returned' });
    expect(page.text('h1')).toBe('Rails');
    expect(plain(page.text('.guidance [role="status"]'))).toBe('');
  });

  test('closes the sheet that it was taken from', async () => {
    await show('nothing');
    await press('U');
    await page.click('dialog .proposal .action');
    expect(page.all('dialog')).toEqual([]);
    expect(plain(page.text('.guidance [role="status"]'))).toContain('Detour');
  });

  test('is not offered while a remedy is at hand', async () => {
    await show('nothing', '5', '0.1');
    expect(page.all('.proposal, .quicker-line')).toEqual([]);
  });
});

test('a failed proof says above the next step what is still wrong', async () => {
  await show('nothing', '5', '4.5', 'acknowledge', '0', 'remedied', '0', 'none');
  expect(plain(page.text('.why-loud'))).toContain('CPU clock at the socket is still none');
});

test('the list of keys holds every key there is', async () => {
  await show('nothing');
  await page.press('?');
  const keys = page.texts('.key-list kbd');
  for (const letter of 'ABCJKMNQRSTUW') expect(keys).toContain(`Alt ${letter}`);
});
