import { describe, expect, test } from 'vitest';
import { PaperBench } from '../helpers/paper-bench.ts';

const sheet = `---
format: 1
kind: board
title: Plover P2
boards: [486]
jumpers:
  JP1: { is: Bus clock, positions: [1-2, 2-3] }
  JP2: { is: Bus clock, positions: [closed, open] }
  JP9: { is: Speaker, positions: [closed, open] }
tables:
  bus:
    JP1 1-2 + JP2 open: 25 MHz
    JP1 1-2 + JP2 closed: 33.3 MHz
    JP1 2-3: 40 MHz
  cpu:
    JP2 open: dx
    JP2 closed: sx
fitting:
  memory: { is: Memory, sockets: [A, B], together: [[A, B]] }
---

# Plover P2
`;

const run = (...args: readonly string[]) => {
  const bench = new PaperBench();
  bench.files.set('p2.md', sheet);
  return bench.run(['jumpers', ...args]);
};

describe('deadboard jumpers', () => {
  test('prints every jumper, every table and every group of sockets', async () => {
    expect(await run('p2.md')).toEqual({
      code: 0,
      err: '',
      out: `Plover P2

Jumpers
  JP1  1-2 | 2-3      Bus clock
  JP2  closed | open  Bus clock
  JP9  closed | open  Speaker

bus
  JP1  JP2
  1-2  open    25 MHz
  1-2  closed  33.3 MHz
  2-3  any     40 MHz

cpu
  JP2
  open    dx
  closed  sx

Memory: A, B
  A + B`,
    });
  });

  test('says what positions set, and what is lacking to know the rest', async () => {
    expect(await run('p2.md', 'jp1=2-3, JP2 open')).toEqual({
      code: 0,
      err: '',
      out: 'bus = 40 MHz\ncpu = dx',
    });
    expect(await run('p2.md', 'JP2 open')).toMatchObject({
      code: 0,
      out: 'bus: Where does JP1 sit? JP2 open makes 25 MHz or 40 MHz\ncpu = dx',
    });
  });

  test('says which positions set a value, with the jumpers that may sit anywhere', async () => {
    expect(await run('p2.md', '--for', 'bus 40 MHz')).toEqual({
      code: 0,
      err: '',
      out: 'bus = 40 MHz\n  JP1  JP2\n  2-3  any',
    });
    expect(await run('p2.md', '--for', 'cpu=sx')).toMatchObject({
      code: 0,
      out: 'cpu = sx\n  JP2\n  closed',
    });
  });

  test('knows what people mean by 33 MHz', async () => {
    expect(await run('p2.md', '--for', 'bus 33')).toMatchObject({
      code: 0,
      out: 'bus = 33.3 MHz\n  JP1  JP2\n  1-2  closed',
    });
    expect(await run('p2.md', '--for', 'bus 33,3 MHz')).toMatchObject({ code: 0 });
    expect(await run('p2.md', '--for', 'bus 32 MHz')).toMatchObject({ code: 1 });
  });

  test('says which sockets may be filled together', async () => {
    expect(await run('p2.md', '--filled', 'b, a')).toMatchObject({
      code: 0,
      out: 'Memory: A + B may be filled together',
    });
    expect(await run('p2.md', '--filled', 'memory A')).toEqual({
      code: 1,
      out: '',
      err: 'A may not be filled alone. It takes: A, B',
    });
  });

  test.each([
    [['JP1 1-2'], 'Where does JP2 sit? JP1 1-2 makes 25 MHz or 33.3 MHz. It takes: JP1 1-2, JP2 open | '],
    [['JP9 open'], 'No table of this sheet speaks of JP9 open'],
    [['JP3 open'], 'This board has no jumper "JP3". It takes: '],
    [['--for', 'buss 40'], 'This board sheet has no jumper table for "buss". It takes: bus 40'],
    [['--for', 'bus 40 V'], 'V'],
    [['--for', 'cpu zx'], '"zx" is not one of dx, sx'],
    [['--for', 'bus'], 'Nothing was typed'],
    [['--filled', 'C'], 'There is no socket "C"'],
  ])('says what it does not know and ends with 1: %j', async (args, said) => {
    const { code, err, out } = await run('p2.md', ...args);
    expect({ code, out }).toEqual({ code: 1, out: '' });
    expect(err).toContain(said);
  });

  test.each([
    [[], 'name a board sheet'],
    [['nowhere.md'], 'cannot read "nowhere.md"'],
    [['p2.md', 'JP1 1-2', '--for', 'bus 40'], 'ask one thing'],
    [['p2.md', '--fro', 'bus 40'], '--fro'],
  ])('says what is missing and ends with 2: %j', async (args, said) => {
    const { code, err } = await run(...args);
    expect(code).toBe(2);
    expect(err).toContain(said);
  });

  test('tells the errors of a broken sheet at their places', async () => {
    const bench = new PaperBench();
    bench.files.set('p2.md', sheet.replace('JP1 2-3: 40', 'JP1 2-4: 40'));
    const { code, err } = await bench.run(['jumpers', 'p2.md']);
    expect(code).toBe(2);
    expect(err).toMatch(/^p2\.md:14:9: error no-position-named: JP1 has no position "2-4"$/m);
    expect(err).toContain('mend them first');
  });

  test('explains itself', async () => {
    const { code, out } = await run('--help');
    expect(code).toBe(0);
    expect(out).toContain('--for "bus 66 MHz"');
  });
});
