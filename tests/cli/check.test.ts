import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import diagnosticSchema from '../../schema/diagnostic.schema.json' with { type: 'json' };
import { PaperBench } from '../helpers/paper-bench.ts';

const good = readFileSync('tests/helpers/bench-tree.md', 'utf8');
const broken = good.replace('→ [Clock](#clock)', '→ [Clock](#clok)').replace('Prove `pg`, `post_code`.', '');

const benchWith = (files: Readonly<Record<string, string>>): PaperBench => {
  const bench = new PaperBench();
  for (const [path, text] of Object.entries(files)) bench.files.set(path, text);
  return bench;
};

describe('deadboard check', () => {
  test('is silent on clean files but for the count, and ends with 0', async () => {
    const ran = await benchWith({ 'good.md': good }).run(['check', 'good.md']);
    expect(ran).toEqual({ code: 0, out: '', err: '1 file: 0 errors, 0 warnings, 0 hints' });
  });

  test('tells every problem with file, line, column, severity, code and what to do, and ends with 1', async () => {
    const line = broken.split('\n').findIndex((text) => text.includes('#clok')) + 1;
    const { code, out } = await benchWith({ 'bad.md': broken }).run(['check', 'bad.md']);
    expect(code).toBe(1);
    expect(out).toMatch(new RegExp(`^bad\\.md:${line}:\\d+: error [a-z-]+: .*clok`, 'm'));
    expect(out).toMatch(/\^/);
    expect(out).toMatch(/#clock/);
    expect(out).toMatch(/^bad\.md:\d+:\d+: warning end-without-proof: /m);
  });

  test('ends with 0 where there are warnings only', async () => {
    const text = good.replace('Prove `pg`, `post_code`.', '');
    const { code, out } = await benchWith({ 'warned.md': text }).run(['check', 'warned.md']);
    expect(out).toMatch(/warning/);
    expect(code).toBe(0);
  });

  test('goes on with the other files after a broken one', async () => {
    const { err } = await benchWith({ 'bad.md': '---\n: :\n', 'good.md': good }).run([
      'check',
      'bad.md',
      'good.md',
    ]);
    expect(err).toMatch(/^2 files: [1-9]/);
  });

  test('prints records that fit their schema with --json', async () => {
    const { out, code } = await benchWith({ 'bad.md': broken }).run(['check', 'bad.md', '--json']);
    const records = JSON.parse(out);
    const validate = new Ajv2020({ strict: false }).compile(
      diagnosticSchema.type === 'array' ? diagnosticSchema : { type: 'array', items: diagnosticSchema },
    );
    expect(validate(records), JSON.stringify(validate.errors)).toBe(true);
    expect(records.length).toBeGreaterThan(1);
    expect(code).toBe(1);
  });

  test('looks at the files beside a tree, and tells each problem in the file that has it', async () => {
    const folder = 'tests/fixtures/compile/short-on-a-rail';
    const clean = await new PaperBench().run(['check', `${folder}/trees/dead-rail.md`]);
    expect(clean).toMatchObject({ code: 0, out: '' });
    const path = `${folder}/procedures/halves.md`;
    const bench = benchWith({ [path]: readFileSync(path, 'utf8').replace('(#the-left-half)', '(#left)') });
    const { code, out } = await bench.run(['check', folder]);
    expect(code).toBe(1);
    expect(out).toMatch(/halves\.md:\d+:\d+: error no-section-named/);
    expect(out).toMatch(/short-on-a-rail\.md:\d+:\d+: error file-broken/);
    expect(out.match(/no-section-named/g)).toHaveLength(1);
  });

  test('says of a file that is not there what it could have been', async () => {
    const folder = 'tests/fixtures/compile/short-on-a-rail';
    const path = `${folder}/trees/dead-rail.md`;
    const bench = benchWith({ [path]: readFileSync(path, 'utf8').replace('/rails.md', '/rail.md') });
    expect((await bench.run(['check', folder])).out).toMatch(/Did you mean "\.\.\/common\/rails\.md"/);
  });

  test('takes a folder for the trees in it, and passes over pages without front-matter', async () => {
    const { err, code } = await new PaperBench().run(['check', 'trees']);
    expect(code).toBe(0);
    expect(err).toMatch(/^\d+ files?: 0 errors/);
  });

  test.each([
    [['check'], /name the files/],
    [['check', 'nowhere.md'], /cannot read "nowhere.md"/],
    [['check', '--jsn', 'x.md'], /--jsn/],
    [['chekc'], /did you mean "check"/],
    [[], /^$/],
  ])('says what is missing and ends with 2: %j', async (args, said) => {
    const { code, err } = await new PaperBench().run(args);
    expect(code).toBe(2);
    expect(err).toMatch(said);
  });

  test.each([['--help'], ['check', '--help'], ['walk', '--help'], ['record', '--help']])(
    'explains itself: %s %s',
    async (...args) => {
      const { code, out } = await new PaperBench().run(args.filter((arg) => arg !== undefined));
      expect(code).toBe(0);
      expect(out).toMatch(/Usage: deadboard/);
    },
  );
});
