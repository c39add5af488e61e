import { XmlDocument } from 'libxml2-wasm';
import { describe, expect, test } from 'vitest';
import { treeText } from '../engine/cases/small-library.ts';
import { PaperBench } from '../helpers/paper-bench.ts';

const sound = treeText.replace('v5 is low and plug is old', 'v5 is low');
const caseText = (title: string, body: string): string =>
  `---\nformat: 1\nkind: case\ntitle: ${title}\ntree: ../trees/tree.md\n---\n\n${body}\n`;
const fuse = caseText(
  'The fuse',
  '1. `ohms` = 200 Ω\n2. `v5` = 0,3 V\n\nLeads to [Fuse](../trees/tree.md#fuse).',
);
const wrong = caseText('Not the fuse', '1. ohms = 200\n2. v5 = 5\n\nLeads to [Fuse](../trees/tree.md#fuse).');

function benchWith(files: Readonly<Record<string, string>>): PaperBench {
  const bench = new PaperBench();
  for (const [path, text] of Object.entries(files)) bench.files.set(path, text);
  return bench;
}

describe('deadboard cases', () => {
  test('walks the cases named and the faults of their trees, and ends with 0 where all led where they must', async () => {
    const { code, out, err } = await benchWith({ 'lib/trees/tree.md': sound, 'lib/cases/a.md': fuse }).run([
      'cases',
      'lib/cases/a.md',
    ]);
    expect(out.split('\n')).toEqual(['passed  The fuse', 'passed  fuse: The fuse has blown (2 walks)']);
    expect(err).toBe('1 case, 1 fault: all led where they must');
    expect(code).toBe(0);
  });

  test('shows the path of a failing case and the section where it parted, and ends with 1', async () => {
    const { code, out, err } = await benchWith({ 'lib/trees/tree.md': sound, 'lib/cases/b.md': wrong }).run([
      'cases',
      'lib/cases/b.md',
    ]);
    expect(out).toContain(
      'FAILED  Not the fuse\n        it stands at "Fine" instead of "Fuse"; it parted at "Five volts", where it went on to "Fine"\n        path: Ohms > Five volts > Fine',
    );
    expect(err).toBe('1 case, 1 fault: 1 did not lead where they must');
    expect(code).toBe(1);
  });

  test('writes JUnit XML with a failure for each that came out elsewhere', async () => {
    const bench = benchWith({
      'lib/trees/tree.md': treeText,
      'lib/cases/a.md': fuse,
      'lib/cases/b.md': wrong,
    });
    await bench.run(['cases', 'lib/cases/a.md', 'lib/cases/b.md', '--junit', 'out.xml']);
    const xml = XmlDocument.fromString(bench.files.get('out.xml') ?? '');
    expect(xml.find('//testcase/@name').map(({ content }) => content)).toEqual([
      'The fuse',
      'Not the fuse',
      'fuse: The fuse has blown',
    ]);
    expect(xml.find('//failure').length).toBe(2);
    xml.dispose();
  });

  test('says which case has errors, and does not walk it', async () => {
    const bench = benchWith({ 'lib/cases/a.md': fuse });
    const { code, err } = await bench.run(['cases', 'lib/cases/a.md']);
    expect(err).toContain('case-file-missing');
    expect(err).toContain('"lib/cases/a.md" has errors and cannot be walked: mend them first');
    expect(code).toBe(2);
  });

  test('asks for something to walk where there is nothing', async () => {
    expect(await new PaperBench().run(['cases'])).toMatchObject({ code: 2 });
    expect((await new PaperBench().run(['cases', 'nowhere'])).err).toContain('no such file or folder');
  });
});
