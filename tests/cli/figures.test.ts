import { describe, expect, test } from 'vitest';
import type { Figures } from '../../engine/figures/figures.ts';
import { benchTree } from '../helpers/bench.ts';
import { PaperBench } from '../helpers/paper-bench.ts';

const tree = 'tests/helpers/figures-tree.md';

describe('deadboard figures', () => {
  test('prints what a tree takes, what the best order would take, and what to change', async () => {
    const { code, out } = await new PaperBench().run(['figures', tree]);
    expect(code).toBe(0);
    expect(out).toMatch(/Minutes along the tree {2}hands-on {2}waiting\n {2}expected +16\.0 +10\.0/);
    expect(out).toContain('18.5 minutes expected, waiting included; no order takes less.');
    expect(out).toMatch(/ {2}dead_supply +50 % +17\.0 +10\.0 +27\.0/);
    expect(out).toMatch(/mean ambiguity group, rate-weighted +1\.63 +1\.00/);
    expect(out).toContain('broken_switch, dead_supply (63 % of the boards): try them in this order');
    expect(out).toContain('  - Ask `fuse` before “Sound”: −0.6 minutes expected.');
  });

  test('prints them as JSON', async () => {
    const { code, out } = await new PaperBench().run(['figures', tree, '--json']);
    expect(code).toBe(0);
    expect((JSON.parse(out) as Figures).best).toMatchObject({ low: 18.5, high: 18.5, exact: true });
  });

  test('keeps to the width of the terminal', async () => {
    const { out } = await new PaperBench().run(['figures', 'trees/trees/memory.md', '--budget', '40']);
    for (const line of out.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(80);
  });

  test('shows how far the search has come in one line and says what was found where its budget ends', async () => {
    const bench = new PaperBench();
    const { out } = await bench.run(['figures', 'trees/trees/memory.md', '--budget', '300']);
    expect(bench.statuses.length).toBeGreaterThan(1);
    for (const line of bench.statuses)
      expect(line).toMatch(/^\[=* *\] best order \d+\.\d min, none below \d+\.\d/);
    expect(out.replaceAll(/\s+/g, ' ')).toMatch(
      /is the best order found; no order takes less than \d+\.\d\. .* --budget gives it more/,
    );
  });

  test('stops early when asked to, with what was found so far', async () => {
    const bench = new PaperBench();
    bench.stopsAt = 2;
    const { code, out } = await bench.run([
      'figures',
      'trees/trees/memory.md',
      '--budget',
      '100000',
      '--json',
    ]);
    expect(code).toBe(0);
    expect(bench.statuses).toHaveLength(2);
    const { best } = JSON.parse(out) as Figures;
    expect(best.exact).toBe(false);
    expect(best.low).toBeLessThan(best.high);
  });

  test('counts faults as a board sheet has them', async () => {
    const sheet = 'trees/boards/dunlin-dn5.md';
    const { code, out } = await new PaperBench().run([
      'figures',
      'trees/trees/memory.md',
      '--board',
      sheet,
      '--budget',
      '1',
      '--json',
    ]);
    expect(code).toBe(0);
    const share = (JSON.parse(out) as Figures).along.faults.find(
      ({ fault }) => fault === 'wrong_fitting',
    )?.share;
    // 14 of 100 on a board of the 586 class, 12 in the mean.
    expect(share).toBeGreaterThan(0.15);
  });

  test.each([
    [[], 'name one tree'],
    [[tree, tree], 'name one tree'],
    [[tree, '--budget', 'much'], '--budget is a number of states, not "much"'],
    [['no.md'], 'cannot read "no.md": there is no such file'],
  ])('says what is wrong with %j', async (args, said) => {
    const { code, err } = await new PaperBench().run(['figures', ...args]);
    expect({ code, err }).toEqual({ code: 2, err: `deadboard figures: ${said}` });
  });

  test('has nothing to reckon where a tree has no faults', async () => {
    const bench = new PaperBench();
    bench.files.set('bare.json', JSON.stringify({ ...benchTree(), faults: [] }));
    const { code, err } = await bench.run(['figures', 'bare.json']);
    expect(code).toBe(2);
    expect(err).toContain('there is nothing to reckon');
  });
});
