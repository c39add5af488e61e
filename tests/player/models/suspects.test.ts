import { describe, expect, test } from 'vitest';
import { questionOf, type Session } from '../../../engine/run/index.ts';
import { moveLines } from '../../../player/models/move-lines.ts';
import { proposalShown } from '../../../player/models/proposal-shown.ts';
import { shareWords } from '../../../player/models/share-words.ts';
import { stillWrong } from '../../../player/models/still-wrong.ts';
import { suspectLines } from '../../../player/models/suspect-lines.ts';
import { whyHere } from '../../../player/models/why-here.ts';
import { benchTree, opened, walk } from '../../helpers/bench.ts';
import { type Made, madeProposals, madeSuspects } from '../helpers/hand-made-rank.ts';

const tree = benchTree();
const at = (...answers: string[]): Session => walk(tree, ...opened, ...answers);

describe('shareWords()', () => {
  test.each([
    [0.9999, 'over 99 in 100', '> 99 %'],
    [0.97, '97 in 100', '97 %'],
    [0.7, '7 in 10', '70 %'],
    [0.66, '2 in 3', '66 %'],
    [0.5, '5 in 10', '50 %'],
    [0.25, '1 in 4', '25 %'],
    [0.1, '1 in 10', '10 %'],
    [0.05, '1 in 20', '5 %'],
    [0.01, '1 in 100', '1 %'],
    [0.002, 'under 1 in 100', '< 1 %'],
    [0, 'under 1 in 100', '< 1 %'],
  ])('says %d as people do', (share, words, percent) => {
    expect(shareWords(share)).toEqual({ words, percent });
  });

  test('never says less of what is likelier', () => {
    const value = (words: string): number => {
      const [, some = '0', of = '1'] = /(\d+) in (\d+)/.exec(words) ?? [];
      return words.startsWith('under') ? 0 : Number(some) / Number(of);
    };
    const said = Array.from({ length: 1001 }, (_, part) => value(shareWords(part / 1000).words));
    expect(said).toEqual(said.toSorted((a, b) => a - b));
  });
});

describe('moveLines()', () => {
  const session = at('nothing', '5', '4.5');
  const [suspect] = madeSuspects(session, [
    [
      'crystal',
      0.7,
      [
        ['v5 good', 0.98],
        ['pg low good', 0.2, 7],
        ['post_code none', 9],
      ],
    ],
  ]).ranked;
  const { lines, quiet } = moveLines(session, suspect ?? { faults: [], share: 0, moves: [] });

  test('names what moved it in the words of the trade, the strongest first', () => {
    expect(lines.map(({ is, showed, times, way }) => [is, showed, times, way])).toEqual([
      ['Last code on the POST card', 'none', '×9', 'for'],
      ['Power-good, one second after switch-on', 'low or good', '×0.2', 'against'],
    ]);
  });

  test('counts what hardly moved it, and keeps the entry that can be taken again', () => {
    expect(quiet).toBe(1);
    expect(lines.map(({ entry }) => entry)).toEqual([null, 7]);
  });
});

describe('suspectLines()', () => {
  const session = at('nothing', '5');
  const linesOf = (made: readonly Made[], fits?: boolean) =>
    suspectLines(session, madeSuspects(session, made, fits));
  const ids = (lines: readonly { readonly id: string }[]) => lines.map(({ id }) => id);

  test('lists the likeliest, and none of the faults among them where it ranks', () => {
    const { first, rest, restWords } = linesOf([
      ['crystal', 0.5],
      ['', 0.3],
      ['clock_chip', 0.15],
      ['no_power_good', 0.04],
      ['loose_socket', 0.01],
    ]);
    expect(ids(first)).toEqual(['crystal', '', 'clock_chip', 'no_power_good']);
    expect(first[1]?.names).toEqual(["None of the tree's faults"]);
    expect(ids(rest)).toEqual(['loose_socket']);
    expect(restWords).toBe('1 more, 1 in 100');
  });

  test('leaves the ruled out to their own list, unless they are likely all the same', () => {
    const made = (share: number): Made[] => [
      ['crystal', 0.99 - share],
      ['bad_supply', share],
      ['', 0.01],
    ];
    expect(ids(linesOf(made(0.001)).first)).toEqual(['crystal', '']);
    expect(ids(linesOf(made(0.001)).rest)).toEqual([]);
    expect(ids(linesOf(made(0.2)).first)).toEqual(['crystal', 'bad_supply', '']);
  });

  test('names both of two faults at once, and leaves out unlikely pairs', () => {
    const { first, rest } = linesOf([
      ['crystal clock_chip', 0.9],
      ['crystal', 0.05],
      ['crystal no_power_good', 0.02],
      ['', 0.03],
    ]);
    expect(first[0]?.names).toEqual(['The crystal is cracked', 'The clock chip is dead']);
    expect(ids([...first, ...rest])).not.toContain('crystal no_power_good');
  });

  test('finds the odd reading where nothing fits', () => {
    const made: Made[] = [
      ['', 0.9],
      [
        'crystal',
        0.1,
        [
          ['v5 good', 1.5],
          ['pg low', 0.01, 6],
          ['post_code none', 0.5],
        ],
      ],
    ];
    expect(linesOf(made, false).odd).toMatchObject({ reading: 'pg', showed: 'low', entry: 6 });
    expect(linesOf(made).odd).toBe(null);
  });
});

describe('proposalShown()', () => {
  const session = at('nothing');
  const { hypotheses } = madeSuspects(session, [
    ['crystal', 0.6],
    ['no_power_good', 0.3],
    ['', 0.1],
  ]).belief;
  const clock = {
    reading: 'cpu_clk',
    section: 'clock',
    rate: 0.5,
    bands: [
      { band: 'none', share: 0.6 },
      { band: 'good', share: 0.4 },
    ],
    parts: [
      { hypothesis: 0, band: 'none' },
      { hypothesis: 1, band: 'good' },
      { hypothesis: 2, band: 'good' },
    ],
  };
  const shown = (from: Session, ...made: Parameters<typeof madeProposals>[1]) =>
    proposalShown(from, questionOf(from), madeProposals(from, made), hypotheses);

  test('says what the check would tell, and how long it is from there', () => {
    expect(shown(session, { ...clock, changes: { cards: 'out' } })).toEqual({
      section: 'clock',
      reading: 'cpu_clk',
      check: 'CPU clock at the socket (2 min)',
      tells: 'would tell the crystal is cracked from no power-good',
      left: 'about 9 minutes left',
      changes: 'cards out',
      likeliest: 'none is likeliest, 6 in 10',
      under: [
        { band: 'none', suspects: ['the crystal is cracked'] },
        { band: 'good', suspects: ['no power-good', 'something that the tree does not list'] },
      ],
    });
  });

  test('counts a wait apart, and says where the minutes are only a bound', () => {
    const made = madeProposals(session, [{ ...clock, wait: 30 }], false);
    expect(proposalShown(session, questionOf(session), made, hypotheses)).toMatchObject({
      check: 'CPU clock at the socket (2 min, 30 min waiting)',
      left: 'at least 9 minutes left',
    });
  });

  test('is silent on what the tree asks for anyway, and on what is hardly quicker', () => {
    const v5 = { reading: 'v5', section: 'rails', rate: 0.48 };
    expect(shown(session, v5, clock)).toBe(null);
    expect(shown(session, { ...v5, reading: 'pg' }, clock)).toBe(null);
    expect(shown(session, clock, v5)).toBe(null);
    expect(shown(session, clock, { ...v5, rate: 0.2 })).not.toBe(null);
  });

  test('goes only where a section says how', () => {
    expect(shown(session, { ...clock, section: null })).toBe(null);
  });

  test('waits while a remedy, its proof or a hazard is at hand', () => {
    const due = { reading: 'v5', section: 'rails', rate: 5, parts: clock.parts };
    expect(shown(at('nothing', '5', '4.5'), due)).toBe(null);
    expect(shown(at('nothing', '5', '0.1'), due)).toBe(null);
    expect(shown(at('nothing', '5', '0.1', 'remedied'), due)).toBe(null);
    expect(shown(at('upgrade', 'wait'), due)).toBe(null);
    expect(shown(at('upgrade'), due)).not.toBe(null);
  });
});

test('whyHere() says that a detour was taken, also once its danger was acknowledged', () => {
  const detour = at('nothing', 'detour cpu_clk');
  const why = { text: 'A detour from "Rails": it is quicker from here', remark: [] };
  expect([
    whyHere(detour),
    whyHere(walk(tree, ...opened, 'nothing', 'detour cpu_clk', 'acknowledge')),
  ]).toEqual([why, why]);
  expect(whyHere(at('nothing', 'detour cpu_clk', 'return'))?.text).toBe('Back from the detour');
});

describe('after a failed proof', () => {
  const failed = at('nothing', '5', '4.5', 'acknowledge', '0', 'remedied', '0', 'none');

  test('stillWrong() names the first reading that is as wrong as before, and counts the others', () => {
    expect(stillWrong(failed)).toBe('CPU clock at the socket is still none, and 1 more is wrong');
    expect(stillWrong(at('nothing', '5'))).toBe(null);
  });

  test('the line above the step says so, loud', () => {
    expect(whyHere(failed)).toMatchObject({
      text: expect.stringContaining('"The crystal is cracked" was not the cause, or not the only one'),
      loud: true,
    });
  });
});
