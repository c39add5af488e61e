import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { PaperBench } from '../helpers/paper-bench.ts';
import { parsedXml } from '../helpers/xml.ts';

const good = readFileSync('tests/helpers/bench-tree.md', 'utf8');
const broken = good.replace('→ [Clock](#clock)', '→ [Clock](#clok)');

const checked = async (): Promise<PaperBench> => {
  const bench = new PaperBench();
  bench.files.set('good.md', good);
  bench.files.set('bad.md', broken);
  const { code, out } = await bench.run([
    'check',
    'good.md',
    'bad.md',
    '--sarif',
    'out.sarif',
    '--junit',
    'out.xml',
  ]);
  expect(code).toBe(1);
  expect(out).toMatch(/^bad\.md:\d+:\d+: error /m);
  return bench;
};

describe('deadboard check', () => {
  test('writes a SARIF log beside what it prints', async () => {
    const [run] = JSON.parse((await checked()).files.get('out.sarif') ?? '').runs;
    expect(run.results.length).toBeGreaterThan(0);
    expect(run.artifacts).toHaveLength(2);
    expect(run.tool.driver.semanticVersion).toMatch(/^\d+\.\d+\.\d+$/);
  });

  test('names in the log the page that explains the codes, where it really is', async () => {
    const [run] = JSON.parse((await checked()).files.get('out.sarif') ?? '').runs;
    const { id, helpUri } = run.tool.driver.rules[0];
    expect(readFileSync(new URL(helpUri), 'utf8')).toContain(`\`${id}\``);
  });

  test('writes JUnit XML with a failure for every file that has errors', async () => {
    parsedXml((await checked()).files.get('out.xml') ?? '', (document) => {
      expect(document.find('//testcase/@name').map(({ content }) => content)).toEqual(['good.md', 'bad.md']);
      expect(document.find('//testcase[failure]/@name').map(({ content }) => content)).toEqual(['bad.md']);
      expect(document.get('//failure')?.content).toMatch(/^bad\.md:\d+:\d+: error /);
    });
  });
});
