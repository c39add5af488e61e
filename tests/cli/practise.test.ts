import { describe, expect, test } from 'vitest';
import type { DrillResult } from '../../engine/practice/index.ts';
import { PaperBench } from '../helpers/paper-bench.ts';

const tree = 'tests/helpers/bench-tree.md';
const answers = (...texts: string[]): string[] => texts.flatMap((text) => ['--answer', text]);
const sealed = async (fault: string, ...more: string[]): Promise<string> =>
  (await new PaperBench().run(['practise', tree, '--seal', fault, '--seed', '1', ...more])).out;

describe('deadboard practise, at a keyboard', () => {
  test('plays a drill to its debrief, and keeps how it went', async () => {
    const bench = new PaperBench();
    const code = await sealed('crystal');
    const { out, code: exit } = await bench.run(
      ['practise', tree, '--code', code, '--name', 'A. Trainee', '--result', 'a.json'],
      [
        '?',
        'checks',
        'faults',
        'cpu_clk',
        'acknowledge',
        'predict v5 = good',
        'v5',
        'abc',
        'hint',
        'hint',
        'name bad_supply',
        'name crystal',
        'never asked',
      ],
    );
    expect(exit).toBe(0);
    expect(out).toContain('== Board held in reset ==');
    expect(out).toContain(`This board: ${code}`);
    expect(out).toContain('! Danger: The heat sink of this board stands at supply voltage');
    expect(out).toMatch(/CPU clock at the socket: .*none/);
    expect(out).toContain('"abc" is neither a reading nor a word of a drill');
    expect(out).toMatch(/Measure next: .*\(5\s+minutes\)/s);
    expect(out).toContain('That was not it: the board still shows its fault.');
    expect(out).toContain('That was it: the proof is complete.');
    expect(out).toContain('It was: The crystal is cracked');
    expect(out).toMatch(/minute +suspects +as many as +bits +event\n +0 .* the symptom/);
    const result = JSON.parse(bench.files.get('a.json') ?? 'null') as DrillResult;
    expect(result).toMatchObject({
      name: 'A. Trainee',
      code,
      hidden: 'crystal',
      outcome: 'found',
      rightAtFirst: false,
      wrong: ['bad_supply'],
      hints: 2,
      predictions: { right: 1, of: 1 },
    });
  });

  test('goes the way of the tree with --guided, and says where it has led', async () => {
    const code = await sealed('bad_supply', '--guided');
    const lines = ['next', 'acknowledge', 'next', 'next', 'next', 'name bad_supply'];
    const { out } = await new PaperBench().run(['practise', tree, '--code', code], lines);
    expect(out).toContain('The tree says what is next');
    expect(out).toContain('The tree asks for no reading here');
    expect(out).toContain('That was it');
  });

  test('ends where the input ends, and where it is given up', async () => {
    const code = await sealed('crystal');
    const left = await new PaperBench().run(['practise', tree, '--code', code], ['v5', 'quit']);
    expect(left.out).not.toContain('Debrief');
    const given = await new PaperBench().run(['practise', tree, '--code', code], ['give up']);
    expect(given.out).toContain('It was: The crystal is cracked');
  });
});

describe('deadboard practise, scripted', () => {
  test('gives the same board to everybody who has the code, as JSON', async () => {
    const code = await sealed('no_power_good');
    const once = async () =>
      JSON.parse(
        (
          await new PaperBench().run([
            'practise',
            tree,
            '--code',
            code,
            '--json',
            ...answers('v5', 'acknowledge', 'pg', 'name no_power_good'),
          ])
        ).out,
      );
    expect(await once()).toEqual(await once());
    expect(await once()).toMatchObject({ hidden: 'no_power_good', outcome: 'found', checks: 2 });
  });

  test('stops at the first line that is refused, with 1', async () => {
    const { code, err } = await new PaperBench().run([
      'practise',
      tree,
      '--seed',
      '4',
      ...answers('name nobody', 'name crystal'),
    ]);
    expect(code).toBe(1);
    expect(err).toMatch(/"name nobody" was not taken: "nobody" is no fault of this tree/);
  });

  test('opens a sealed board', async () => {
    const code = await sealed('clock_chip');
    const { out } = await new PaperBench().run(['practise', tree, '--code', code, '--open']);
    expect(out).toBe('clock_chip: The clock chip is dead');
  });

  test.each([
    [['practise'], /name a tree/],
    [['practise', tree, '--seed', 'x'], /"x" is no seed/],
    [['practise', tree, '--seal', 'crystall'], /did you mean "crystal"\?/],
    [['practise', tree, '--lacking', 'hammer'], /no check asks for "hammer": the tools are meter, scope/],
    [['practise', tree, '--code', 'bench-tree:AB'], /Letters are missing/],
    [['practise', tree, '--code', 'memory:03YDG-80000-0282'], /for the tree "memory", not for "bench-tree"/],
    [['practise', tree, tree], /name one tree, or --surprise/],
    [['practise', '--collect'], /name the files of the results/],
  ])('%j could not run, and says why', async (args, why) => {
    const { code, err } = await new PaperBench().run(args);
    expect(code).toBe(2);
    expect(err).toMatch(why);
  });

  test('surprises with one of several trees', async () => {
    const { out } = await new PaperBench().run([
      'practise',
      tree,
      'tests/helpers/whole-tree.md',
      '--surprise',
      '--seed',
      '1',
      ...answers('give up'),
    ]);
    expect(out).toContain('== No clock on the bus ==');
  });
});

describe('deadboard practise --collect', () => {
  const handedIn = async (): Promise<PaperBench> => {
    const bench = new PaperBench();
    const code = await sealed('crystal');
    for (const [name, first] of [
      ['Ada', 'crystal'],
      ['Ben', 'bad_supply'],
    ] as const) {
      await bench.run([
        'practise',
        tree,
        '--code',
        code,
        '--name',
        name,
        '--result',
        `${name}.json`,
        ...answers('cpu_clk', 'anyway', `name ${first}`),
        ...(first === 'crystal' ? [] : answers('give up')),
      ]);
    }
    return bench;
  };

  test('prints the results of a class as a table, those who were right at first above', async () => {
    const { out, code } = await (await handedIn()).run(['practise', '--collect', 'Ben.json', 'Ada.json']);
    expect(code).toBe(0);
    expect(out).toMatch(/name +board +outcome +right at first +minutes +best +hints +passed over +harm/);
    expect(out).toMatch(/Ada +\S+ +found +yes[\s\S]*Ben +\S+ +gave up +no/);
    expect(out).toContain('2 results, 1 board, right at first: 1');
  });

  test('gives them as JSON', async () => {
    const { out } = await (await handedIn()).run(['practise', '--collect', 'Ada.json', '--json']);
    expect(JSON.parse(out)).toMatchObject([{ name: 'Ada', passedOver: 2 }]);
  });

  test('says which file is no result', async () => {
    const bench = await handedIn();
    bench.files.set('x.json', '{"format":1}');
    const { code, err } = await bench.run(['practise', '--collect', 'Ada.json', 'x.json']);
    expect(code).toBe(2);
    expect(err).toMatch(/"x.json" is no result of a drill: the file must have required property/);
  });
});
