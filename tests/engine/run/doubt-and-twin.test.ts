import { describe, expect, test } from 'vitest';
import { compileBoard } from '../../../engine/board/compile-board.ts';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import { expectationOf, latest, openSession, questionOf, replay } from '../../../engine/run/index.ts';
import { benchTree, refusalOf, say, walkWith, wholeTree } from '../../helpers/bench.ts';

const tree = wholeTree();
const opened = ['open: Board 9', '66', '66', 'none', 'r_v5 = 150'];
const meter = 'instruments: bench meter (meter): 6 V ± (0.5 % + 2) at 10 mV; 60 V ± (0.8 % + 3) at 10 mV';
const noBoard = { board: null, laterTrees: [] };
const started = (...answers: string[]) => walkWith(tree, noBoard, ...opened, ...answers);

describe('the instruments at the bench', () => {
  test('leave a value near a limit in two bands, and the question says what would settle it', () => {
    const session = [meter, 'v5 = 4.76'].reduce(say, started());
    // 0.5 % of 4.76 V and 2 × 10 mV (computed): ± 43.8 mV, and the limit is 10 mV away
    expect(latest(session, 'v5')).toMatchObject({
      bands: ['low', 'good'],
      observation: { doubt: { instrument: 'bench meter', plusMinus: { value: '219/5000' } } },
    });
    expect(questionOf(session)).toMatchObject({
      ask: 'too-close',
      unsettled: [{ reading: { id: 'v5' }, bands: ['low', 'good'] }],
    });
    expect(say(session, 'as if pull-the-cards').position.section?.id).toBe('pull-the-cards');
  });

  test('do so by guarded acceptance only', () => {
    const session = [meter, 'rule: simple', 'v5 = 4.76'].reduce(say, started());
    expect(latest(session, 'v5')).toMatchObject({ bands: ['good'] });
    expect(latest(session, 'v5')?.observation?.doubt?.shares).toHaveLength(2);
  });

  test('say nothing of what was read before', () => {
    const session = say(started('v5 = 4.76'), meter);
    expect(latest(session, 'v5')?.observation?.doubt).toBeNull();
    expect(session.equipment.instruments.map(({ name }) => name)).toEqual(['bench meter']);
  });

  test('keep the width that an entry was taken with when a setting is corrected', () => {
    const session = [
      'instrument: counter (scope): 100 MHz ± 1 %',
      'go clocks',
      'cpu_clk = 65.5',
      'correct bus := 65.5',
    ].reduce(say, started());
    // ± 0.655 MHz: against 66 MHz ± 1 % it reaches below 65.34 MHz, against 65.5 MHz it lies inside (computed)
    expect(latest(session, 'cpu_clk')).toMatchObject({
      observation: { doubt: { plusMinus: { value: '655000' } } },
    });
    expect(latest(session, 'cpu_clk')?.bands).toEqual(['good']);
  });

  test('are told one by one or together, and a line that is none is refused', () => {
    const session = [meter, 'instrument: scope (scope): 100 MHz ± 25 ppm'].reduce(say, started());
    expect(session.equipment.instruments.map(({ tool }) => tool)).toEqual(['meter', 'scope']);
    expect(say(session, 'instruments: none').equipment.instruments).toEqual([]);
    expect(refusalOf(session, 'instrument: my old meter')).toMatch(/does not begin with a name/);
  });
});

describe('a tool that is not there', () => {
  test('makes a reading one that cannot be read, by one key and with the reason', () => {
    const session = ['lacking: scope', 'go clocks'].reduce(say, started());
    expect(questionOf(session)).toMatchObject({ ask: 'reading', reading: { id: 'cpu_clk' }, lacks: 'scope' });
    expect(say(session, 'cannot read').entries.at(-1)).toMatchObject({ kind: 'unread', why: 'no scope' });
  });

  test('can be there after all', () => {
    const session = ['lacking: scope', 'lacking: nothing', 'go clocks'].reduce(say, started());
    expect(questionOf(session)).toMatchObject({ lacks: null });
  });
});

const sheet = `---
format: 1
kind: board
title: A plain board
boards: [586]
settings: { bus: 60 MHz }
jumpers:
  JP12: { is: clock, positions: [1-2, 2-3] }
  JP13: { is: clock too, positions: [1-2, open] }
tables:
  bus:
    JP12 1-2 + JP13 open: 66 MHz
    JP12 2-3: 50 MHz
references:
  - { date: 2026-03-02, instrument: bench scope, readings: { ref_swing: 1.2 Vpp } }
  - { date: 2026-01-02, instrument: bench scope, readings: { ref_swing: 0.9 Vpp } }
---

# A plain board
`;

/** The sheet as it is compiled beside the shared file that declares what it speaks of. */
function board(): CompiledBoard {
  const shared = `---
format: 1
kind: shared
title: Clocks
settings:
  bus: { is: bus clock, unit: MHz }
readings:
  ref_swing: { is: swing, unit: Vpp, scale: weak < twin * 60 % < good, normal: good, source: common practice }
---
`;
  const text = sheet.replace('boards: [586]', 'boards: [586]\nuses: [clocks.md]');
  const library = { text: (path: string) => (path === 'clocks.md' ? shared : null), picture: () => null };
  const { board: compiled, diagnostics } = compileBoard(text, { id: 'plain', path: 'plain.md', library });
  if (compiled === null) throw new Error(JSON.stringify(diagnostics));
  return compiled;
}

describe('what a known-good board shows', () => {
  const atReference = (...answers: string[]) => say(started(...answers), 'go reference');

  test('is asked for where a limit rests on it and nobody knows', () => {
    expect(questionOf(atReference())).toMatchObject({ ask: 'reading', twinWanted: true });
    expect(questionOf(atReference('twin ref_swing = 1.2 Vpp'))).toMatchObject({ twinWanted: false });
  });

  test('leaves both bands open until it is read, and then the check goes on by itself', () => {
    const session = say(atReference(), '0.8 Vpp');
    expect(questionOf(session)).toMatchObject({
      ask: 'too-close',
      unsettled: [{ by: [{ kind: 'twin' }] }],
    });
    const known = say(session, 'twin ref_swing = 1.2 Vpp');
    expect(known.position.section?.id).toBe('lines');
    expect(latest(known, 'ref_swing')).toMatchObject({
      bands: ['good'],
      observation: { used: { twin: { from: 'this job' } } },
    });
    expect(say(known, 'back').position.section?.id).toBe('reference');
  });

  test('is taken from the board sheet, of several days the last, until it is read in this job', () => {
    const session = openSession(tree, { board: board(), laterTrees: [] });
    expect(session.twins.get('ref_swing')).toMatchObject({ value: { value: '6/5' }, from: 'board sheet' });
    const read = walkWith(tree, { board: board(), laterTrees: [] }, 'open: x', 'twin ref_swing = 1,5 Vpp');
    expect(read.twins.get('ref_swing')).toMatchObject({ value: { value: '3/2' }, from: 'this job' });
  });

  test('is one value of a quantity', () => {
    expect(refusalOf(started(), 'twin ref_swing = 1..2 Vpp')).toMatch(/not one value/);
    expect(refusalOf(started(), 'twin beeps = none')).toMatch(/only quantities/);
    expect(refusalOf(started(), 'twin ref = 1')).toMatch(/no reading "ref"/);
  });
});

describe('a board sheet', () => {
  const on = (...answers: string[]) =>
    walkWith(tree, { board: board(), laterTrees: [] }, 'open: x', ...answers);

  test('lends its usual settings, and says what it cannot lend', () => {
    const { loaded } = on();
    expect(loaded.settings.get('bus')).toMatchObject({ usual: { value: '60000000' } });
    expect(loaded.tree.digest).toBe(tree.digest);
    expect(loaded.boardMisfits).toEqual([]);
    expect(openSession(benchTree(), { board: board(), laterTrees: [] }).loaded.boardMisfits).toEqual([]);
  });

  test('lets a setting be told by its jumpers, and keeps what was typed', () => {
    const session = on('JP12 1-2, JP13 open');
    expect(session.entries.at(-1)).toMatchObject({
      kind: 'set',
      typed: 'JP12 1-2, JP13 open',
      value: { value: '66000000', unit: 'MHz' },
    });
    const altered = ['66', 'bus := jp12 2-3'].reduce(say, session);
    expect(altered.entries.at(-1)).toMatchObject({ kind: 'altered', value: { value: '50000000' } });
  });

  test('asks for the jumper that is missing, and names the jumpers where nothing was understood', () => {
    expect(refusalOf(on(), 'JP12 1-2, JP13 1-2')).toMatch(/no row of the jumper table/);
    expect(refusalOf(on(), 'JP13 open')).toMatch(/JP12/);
    expect(refusalOf(on(), 'slow')).toMatch(/positions of JP12, JP13 would do/);
  });

  test('is part of the replay', () => {
    const session = on('JP12 2-3', '66', 'none', '150', '5');
    const parts = { board: board(), laterTrees: [] };
    const again = replay(tree, JSON.parse(JSON.stringify(session.entries)), parts);
    expect(again.history).toEqual(session.history);
    expect(expectationOf(again, again.loaded.readings.get('cpu_clk') as never).text).toBe(
      '49.5 MHz .. 50.5 MHz',
    );
  });
});
