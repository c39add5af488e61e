import { describe, expect, test } from 'vitest';
import { PaperBench } from '../helpers/paper-bench.ts';
import { parsedXml } from '../helpers/xml.ts';

const tree = 'tests/helpers/bench-tree.md';

describe('deadboard write', () => {
  test('prints a state chart', async () => {
    const { code, out } = await new PaperBench().run(['write', tree, '--as', 'scxml']);
    expect(code).toBe(0);
    parsedXml(out, (document) => expect(document.root.name).toBe('scxml'));
  });

  test('writes a map into a file', async () => {
    const bench = new PaperBench();
    const { code, out } = await bench.run(['write', tree, '--as', 'map', '--out', 'map.svg']);
    expect({ code, out }).toEqual({ code: 0, out: '' });
    parsedXml(bench.files.get('map.svg') ?? '', (document) => expect(document.root.name).toBe('svg'));
  });

  test('writes a procedure on paper with the day it was printed', async () => {
    const bench = new PaperBench();
    await bench.run(['write', tree, '--as', 'paper', '--out', 'paper.html']);
    expect(bench.files.get('paper.html')).toMatch(/^<!DOCTYPE html>[\s\S]*printed 2026-03-01/);
  });

  test.each([
    [[tree], 'say --as with one of paper, map, scxml'],
    [[tree, '--as', 'toString'], '--as is one of paper, map, scxml, not "toString"'],
    [['--as', 'map'], 'name one tree'],
    [['no.md', '--as', 'map'], 'cannot read "no.md": there is no such file'],
  ])('says what is missing in %j', async (args, said) => {
    const { code, err } = await new PaperBench().run(['write', ...args]);
    expect({ code, err }).toEqual({ code: 2, err: `deadboard write: ${said}` });
  });

  test('says so where the file cannot be written', async () => {
    const bench = new PaperBench();
    bench.full = true;
    const { code, err } = await bench.run(['write', tree, '--as', 'scxml', '--out', 'x.scxml']);
    expect(code).toBe(2);
    expect(err).toMatch(/cannot write "x\.scxml": no space left on device\. Free some room/);
  });
});
