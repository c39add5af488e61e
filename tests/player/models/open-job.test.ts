import { describe, expect, test } from 'vitest';
import { questionOf } from '../../../engine/run/index.ts';
import { createOpenJob, type OpenJob } from '../../../player/models/open-job.ts';
import type { Ports } from '../../../player/ports/ports.ts';
import { benchTree, opened } from '../../helpers/bench.ts';
import { benchPorts, windowsOfOneBench } from '../helpers/bench-ports.ts';
import { putOnBench } from '../helpers/put-on-bench.ts';

const tree = benchTree();

async function open(ports: Ports): Promise<OpenJob> {
  const job = createOpenJob(ports, 'job');
  await job.load();
  return job;
}

async function atRails() {
  const ports = benchPorts(tree);
  await putOnBench(ports, tree, ...opened, 'nothing');
  return { ports, job: await open(ports) };
}

const value = (typed: string) => ({ say: 'value', reading: null, typed, board: 'failing' }) as const;

function asked(job: OpenJob): string {
  const state = job.state.value;
  if (state.state !== 'ready') return state.state;
  const question = questionOf(state.session);
  return question.ask === 'reading' ? question.reading.id : question.ask;
}

async function held(ports: Ports): Promise<number> {
  const job = await ports.store.load('job');
  return job.ok ? job.value.entries.length : 0;
}

describe('createOpenJob()', () => {
  test('takes a job up where it stood', async () => {
    const { job } = await atRails();
    expect(asked(job)).toBe('v5');
  });

  test('says so when the job is not there', async () => {
    const job = await open(benchPorts(tree));
    expect(job.state.value).toMatchObject({
      state: 'failed',
      why: expect.stringContaining('not on this bench'),
    });
  });

  test('stores an entry before the screen moves on', async () => {
    const { ports, job } = await atRails();
    const append = ports.store.append;
    const seen: string[] = [];
    ports.store.append = async (...args) => {
      seen.push(asked(job));
      const stored = await append(...args);
      seen.push(asked(job));
      return stored;
    };
    job.typed.value = '5.02';
    expect(await job.answer(value('5.02'))).toBe(true);
    expect(seen).toEqual(['v5', 'v5']);
    expect(asked(job)).toBe('pg');
    expect(job.typed.value).toBe('');
  });

  test('keeps the field and the step when the store is full, and offers a file', async () => {
    const { ports, job } = await atRails();
    const before = await held(ports);
    ports.store.failWith({ kind: 'full' });
    job.typed.value = '5.02';
    expect(await job.answer(value('5.02'))).toBe(false);
    expect(asked(job)).toBe('v5');
    expect(job.typed.value).toBe('5.02');
    expect(job.notice.value).toMatchObject({ tone: 'refused', offerFile: true });
    ports.store.failWith(null);
    expect(await held(ports)).toBe(before);
    expect(await job.answer(value('5.02'))).toBe(true);
    expect(asked(job)).toBe('pg');
  });

  test.each(['', '   ', 'about five', '5 Ω'])('enters nothing for "%s"', async (typed) => {
    const { ports, job } = await atRails();
    const before = await held(ports);
    expect(await job.answer(value(typed))).toBe(false);
    expect(asked(job)).toBe('v5');
    expect(await held(ports)).toBe(before);
    expect(job.notice.value?.tone).toBe('refused');
  });

  test('takes one answer at a time: a second Enter while the first is stored does nothing', async () => {
    const { ports, job } = await atRails();
    const before = await held(ports);
    const both = await Promise.all([job.answer(value('5.02')), job.answer(value('5.02'))]);
    expect(both).toEqual([true, false]);
    expect(await held(ports)).toBe(before + 1);
  });

  test('shows what another window did, and what stood in the field here', async () => {
    const { ports, job } = await atRails();
    const windows = windowsOfOneBench();
    const [mine, theirs] = [
      await open({ ...ports, windows: windows() }),
      await open({ ...ports, windows: windows() }),
    ];
    mine.typed.value = '4.9';
    expect(await theirs.answer(value('5.02'))).toBe(true);
    await expect.poll(() => asked(mine)).toBe('pg');
    expect(mine.notice.value).toMatchObject({ tone: 'told', text: expect.stringContaining('"4.9"') });
    job.dispose();
  });

  test('keeps what stands in the field when another window only wrote a note', async () => {
    const { ports } = await atRails();
    const windows = windowsOfOneBench();
    const [mine, theirs] = [
      await open({ ...ports, windows: windows() }),
      await open({ ...ports, windows: windows() }),
    ];
    mine.typed.value = '4.9';
    await theirs.answer({ say: 'note', text: 'smells of smoke' });
    await expect.poll(() => mine.notice.value?.tone).toBe('told');
    expect(mine.typed.value).toBe('4.9');
  });

  test('loses no entry when another window went on unheard', async () => {
    const { ports, job } = await atRails();
    const other = await open({ ...ports, windows: windowsOfOneBench()() });
    await other.answer(value('5.02'));
    job.typed.value = '4.9';
    expect(await job.answer(value('4.9'))).toBe(false);
    expect(asked(job)).toBe('pg');
    expect(job.notice.value).toMatchObject({ tone: 'refused', text: expect.stringContaining('"4.9"') });
    const stored = await ports.store.load('job');
    const values = stored.ok
      ? stored.value.entries.flatMap((entry) => (entry.kind === 'read' ? [entry.observation.typed] : []))
      : [];
    expect(values).toContain('5.02');
    expect(values).not.toContain('4.9');
  });

  test('empties the field when a step back asks for another reading', async () => {
    const { job } = await atRails();
    await job.answer(value('5.02'));
    job.typed.value = '4';
    await job.answer({ say: 'back' });
    expect(asked(job)).toBe('v5');
    expect(job.typed.value).toBe('');
  });

  test('asks for the symptom again on a later day, and only once', async () => {
    const { ports, job } = await atRails();
    expect(job.askAgain.value).toBe(false);
    ports.clock.forward(60 * 24);
    const later = await open(ports);
    expect(later.askAgain.value).toBe(true);
    await later.answer({ say: 'resume', same: true });
    expect(later.askAgain.value).toBe(false);
  });

  test('keeps the card of the job in step', async () => {
    const { ports, job } = await atRails();
    await job.answer(value('0.1'));
    await job.answer({ say: 'todo', text: 'order a supply' });
    const list = await ports.store.list();
    expect(list.ok && list.value[0]).toMatchObject({
      board: 'Board 7',
      finding: '5 V at the slot: 0.1 V, none',
      standsAt: 'Rails',
      todo: ['order a supply'],
      state: 'open',
    });
  });
});
