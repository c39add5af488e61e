import { describe, expect, test } from 'vitest';
import { nameFault, planDrill, resultOf, startDrill } from '../../../../engine/practice/index.ts';
import { classCsv, createClassResults } from '../../../../player/models/practice/class-results.ts';
import { rowOfResult } from '../../../../player/models/practice/row-of-result.ts';
import { benchTree } from '../../../helpers/bench.ts';
import { benchPorts } from '../../helpers/bench-ports.ts';

const tree = benchTree();
const drill = nameFault(
  startDrill(planDrill(tree, { seed: 7, manner: 'free', fault: 'crystal' }), tree),
  'crystal',
).drill;
const result = (name: string) => JSON.stringify(resultOf(drill, name, '2031-04-05T18:30:00+02:00'));

describe('createClassResults()', () => {
  test('makes one table of many files, by name, and says which were none', async () => {
    const ports = benchPorts(tree);
    const results = createClassResults(ports);
    ports.files.nextAll = [
      { name: 'b.json', text: result('Bo') },
      { name: 'a.json', text: result('Ada') },
      { name: 'job.json', text: '{"kind":"job"}' },
      { name: 'x.json', text: 'hello' },
    ];
    await results.takeIn();
    expect(results.rows.value.map(({ name, found, rightAtFirst }) => [name, found, rightAtFirst])).toEqual([
      ['Ada', true, true],
      ['Bo', true, true],
    ]);
    expect(results.said.value).toContain('2 of 4 taken in');
    expect(results.said.value).toContain('"job.json": it is no result of a drill');
    results.saveTable();
    expect(ports.files.saved[0]?.name).toBe('class-2031-04-05.csv');
    expect(ports.files.saved[0]?.text.split('\r\n')).toHaveLength(4);
  });

  test('changes nothing when no file is chosen', async () => {
    const results = createClassResults(benchPorts(tree));
    await results.takeIn();
    expect([results.rows.value, results.said.value]).toEqual([[], '']);
  });
});

describe('rowOfResult()', () => {
  test.each([
    ['', 'no result'],
    ['null', 'no result'],
    ['[1]', 'no result'],
    ['{"kind":"drill-result","format":2}', 'newer version'],
    ['{"kind":"drill-result","format":1}', 'parts of it are missing'],
  ])('takes nothing on trust: %s', (text, why) => {
    expect(rowOfResult(text)).toEqual({ ok: false, why: expect.stringContaining(why) });
  });
});

describe('classCsv()', () => {
  test('quotes as RFC 4180 says, and lets no name become a formula', () => {
    const row = { code: 't:1', found: true, rightAtFirst: false, minutes: 9, hints: 0, passed: 1, harm: 0 };
    expect(
      classCsv([
        { ...row, name: 'Ada "the probe", Ms' },
        { ...row, name: '=1+1' },
      ]),
    ).toBe(
      'name,code,found,right at first,minutes,hints,warnings passed over,harm\r\n' +
        '"Ada ""the probe"", Ms",t:1,yes,no,9,0,1,0\r\n' +
        "'=1+1,t:1,yes,no,9,0,1,0\r\n",
    );
  });
});
