import { describe, expect, test } from 'vitest';
import { createDrillRun, type DrillRun } from '../../../../player/models/practice/drill-run.ts';
import { unfinishedDrills } from '../../../../player/models/practice/kept-drill.ts';
import { benchTree } from '../../../helpers/bench.ts';
import { benchPorts, treesOf } from '../../helpers/bench-ports.ts';
import { drillCode } from '../../helpers/drill-code.ts';

const tree = benchTree();
const code = drillCode(tree, 'crystal');

async function started(ports = benchPorts(tree), of = code) {
  const run = createDrillRun(ports, of);
  await run.load();
  return { ports, run };
}

const drillOf = (run: DrillRun) => {
  const { value } = run.drill;
  if (value.state !== 'ready') throw new Error(JSON.stringify(value));
  return value.value;
};

describe('createDrillRun()', () => {
  test('lays the board out, and takes a check with what was said of it before', async () => {
    const { run } = await started();
    run.go({ at: 'check', reading: 'cpu_clk' });
    run.saying.value = 'none';
    run.measure('cpu_clk', true);
    expect(drillOf(run).events.map(({ kind }) => kind)).toEqual(['predicted', 'measured']);
    expect(run.place.value).toEqual({ at: 'answer', reading: 'cpu_clk', said: 'none' });
    expect(run.checks.value.find(({ reading }) => reading.id === 'cpu_clk')?.taken).toHaveLength(1);
  });

  test('goes on where it was when the page is opened again', async () => {
    const { run, ports } = await started();
    run.measure('v5', true);
    run.measure('cpu_clk', false);
    expect(unfinishedDrills(ports.practice)).toMatchObject([{ code, title: tree.title }]);
    const { run: later } = await started(ports);
    expect(drillOf(later)).toEqual(drillOf(run));
  });

  test('says so where the browser keeps nothing, and goes on', async () => {
    const { run, ports } = await started();
    ports.practice.full = true;
    run.measure('v5', true);
    expect(run.kept.value).toBe(false);
    expect(drillOf(run).events).toHaveLength(1);
  });

  test('says what a hint costs before it is taken', async () => {
    const { run } = await started();
    run.askForHint();
    const asked = run.sheet.value;
    expect(asked).toMatchObject({ sheet: 'hint', text: null });
    expect(drillOf(run).minutes).toBe(0);
    run.takeHint();
    expect(run.sheet.value).toMatchObject({ sheet: 'hint', text: expect.stringMatching(/\w/) });
    expect(drillOf(run).minutes).toBe(asked?.sheet === 'hint' ? asked.cost : null);
  });

  test('lets a proof fail on a wrong name, and ends on the right one', async () => {
    const { run, ports } = await started();
    run.measure('cpu_clk', true);
    run.mend('bad_supply');
    const failed = run.place.value;
    expect(failed.at === 'proof' && [failed.right, failed.proof.some(({ good }) => !good)]).toEqual([
      false,
      true,
    ]);
    expect(drillOf(run).state).toBe('running');
    run.mend('crystal');
    const held = run.place.value;
    expect(held.at === 'proof' && [held.right, held.proof.every(({ good }) => good)]).toEqual([true, true]);
    expect(drillOf(run).state).toBe('found');
    expect(unfinishedDrills(ports.practice)).toEqual([]);
  });

  test('keeps the same board for whoever begins it again', async () => {
    const { run } = await started();
    run.measure('cpu_clk', true);
    const first = drillOf(run).events;
    await run.again();
    expect(drillOf(run).events).toEqual([]);
    run.measure('cpu_clk', true);
    expect(drillOf(run).events).toEqual(first);
  });

  test('puts the next check of the tree in front where the tree guides', async () => {
    const { run } = await started(benchPorts(tree), drillCode(tree, 'crystal', 'guided'));
    expect(run.next.value).toBe('story');
    run.measure('story', true);
    expect(run.next.value).toBe('v5');
    const { run: free } = await started();
    expect(free.next.value).toBeNull();
  });

  test('refuses what is no code, a tree that is not there, and one that was changed', async () => {
    const why = async (ports: ReturnType<typeof benchPorts>, of: string) => {
      const { value } = (await started(ports, of)).run.drill;
      return value.state === 'failed' ? value.why : value.state;
    };
    expect(await why(benchPorts(tree), 'hello')).toContain('is no code');
    expect(await why(benchPorts(), code)).toContain('could not be fetched');
    const changed = { ...benchPorts(tree), trees: treesOf([{ ...tree, digest: '0'.repeat(64) }]) };
    expect(await why(changed, code)).toContain('another version');
  });
});
