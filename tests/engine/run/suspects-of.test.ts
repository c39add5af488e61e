import { describe, expect, test } from 'vitest';
import { sightingsOf } from '../../../engine/run/sightings-of.ts';
import { suspectsOf } from '../../../engine/run/suspects-of.ts';
import { benchTree, opened, say, walk, wholeTree } from '../../helpers/bench.ts';

const tree = benchTree();
const started = (...answers: readonly string[]) => walk(tree, ...opened, ...answers);
const meter = 'instruments: bench meter (meter): 6 V ± (0.5 % + 2) at 10 mV';

const told = (session: ReturnType<typeof started>) =>
  sightingsOf(session).map(({ reading, bands, board, alsoPresent }) =>
    [
      `${reading} ${bands.map(({ band }) => band).join('/')}`,
      ...(board === 'running' ? ['running'] : []),
      ...alsoPresent.map((fault) => `with ${fault}`),
    ].join(', '),
  );

const names = (session: ReturnType<typeof started>) =>
  suspectsOf(session).ranked.map(({ faults }) => faults.map(({ id }) => id).join('+'));

describe('sightingsOf()', () => {
  test('tells the symptom and every reading, in the order they were taken', () => {
    expect(told(started('nothing', '0.2', '0.1'))).toEqual([
      'post_code none',
      'story nothing',
      'v5 none',
      'pg low',
    ]);
  });

  test('leaves out what could not be read, what was struck out, and what went stale', () => {
    expect(told(started('cannot read: no owner', '5'))).toEqual(['post_code none', 'v5 good']);
    const struck = started('nothing', '5');
    const at = struck.entries.length;
    expect(told(say(struck, `strike ${at}: wrong pin`))).toEqual(['post_code none', 'story nothing']);
    const clocked = started('nothing', '5', '5', 'acknowledge', '33');
    expect(told(clocked)).toContain('cpu_clk good');
    expect(told(say(clocked, 'bus := 25'))).not.toContain('cpu_clk good');
  });

  test('takes the latest word, and each that was taken again beside it', () => {
    const session = started('nothing', '4.6');
    expect(told(say(session, 'retake v5 = 5')).filter((one) => one.startsWith('v5'))).toEqual(['v5 good']);
    expect(told(say(session, 'again v5 = 5')).filter((one) => one.startsWith('v5'))).toEqual([
      'v5 low',
      'v5 good',
    ]);
  });

  test('gives each band the part of the doubt that lies in it, whatever the rule', () => {
    for (const rule of ['rule: simple', 'rule: guarded']) {
      const session = [meter, rule, 'nothing', '4.76'].reduce(say, started());
      const v5 = sightingsOf(session).find(({ reading }) => reading === 'v5');
      // 4.76 V ± (0.0238 + 0.02) V: from 4.7162 V to 4.8038 V, of which 0.0338 of 0.0876 lies below 4.75 V.
      expect(v5?.bands).toEqual([
        { band: 'low', share: expect.closeTo(0.0338 / 0.0876, 9) },
        { band: 'good', share: expect.closeTo(0.0538 / 0.0876, 9) },
      ]);
    }
  });

  test('weighs a count by how likely it is, what was counted before included', () => {
    const open = ['go how-often', '10 of 10'].reduce(
      say,
      walk(wholeTree(), 'open: Board 9', '66', '66', 'none'),
    );
    const weights = (session: ReturnType<typeof started>) =>
      sightingsOf(session).flatMap(({ reading, bands }) => (reading === 'starts' ? [bands] : []));
    const always = { band: 'always', share: 1 };
    const first = [{ band: 'sometimes', share: expect.closeTo(1 / 11, 12) }, always];
    expect(weights(open)).toEqual([first]);
    expect(weights(say(open, '20 of 20'))).toEqual([
      first,
      [{ band: 'sometimes', share: expect.closeTo(11 / 31, 12) }, always],
    ]);
    expect(weights(say(open, '3 of 20'))).toEqual([first, [{ band: 'sometimes', share: 1 }]]);
  });

  test('tells what was read while the board runs', () => {
    expect(told(started('nothing', '5, running now'))).toContain('v5 good, running');
  });

  test('keeps what was read before a remedy beside what was read after it, with the fault that was there', () => {
    const session = ['remedied', '5', 'none', '0.1'].reduce(say, started('nothing', '0.2', '0.1'));
    expect(told(session)).toEqual([
      'post_code none, with bad_supply',
      'story nothing, with bad_supply',
      'v5 none, with bad_supply',
      'pg low, with bad_supply',
      'v5 good',
      'post_code none',
      'pg low',
    ]);
  });

  test('takes a remedy without effect as no other board: the latest word counts', () => {
    const session = ['remedied', '0.2', 'none', '0.1'].reduce(say, started('nothing', '0.2', '0.1'));
    expect(told(session)).toEqual(['story nothing', 'v5 none', 'post_code none', 'pg low']);
  });

  test('takes nothing of a proof that is under way or passed as evidence against anybody', () => {
    const before = started('nothing', '0.2', '0.1');
    const proving = ['remedied', '5.01'].reduce(say, before);
    expect(told(proving)).toEqual(told(before));
    const mended = ['runs', '4.9'].reduce(say, proving);
    expect(told(mended)).toEqual(told(before));
    expect(names(mended)[0]).toBe('bad_supply');
  });
});

describe('suspectsOf()', () => {
  test('ranks every fault and none of these, with what moved each', () => {
    const { ranked, fits, belief } = suspectsOf(started('nothing', '0.2', '0.1'));
    expect(fits).toBe(true);
    expect(ranked).toHaveLength(tree.faults.length + 1);
    expect(ranked.map(({ share }) => share)).toEqual([...belief.shares].sort((a, b) => b - a));
    expect(ranked[0]?.faults.map(({ id }) => id)).toEqual(['bad_supply']);
    expect(ranked[0]?.moves.map(({ reading }) => reading)).toEqual(['post_code', 'story', 'v5', 'pg']);
  });

  test('says when nothing fits', () => {
    expect(suspectsOf(started('nothing', '5.6')).fits).toBe(false);
  });

  test('puts a fault aside whose remedy had no effect, and suspects two at once from then on', () => {
    const session = ['remedied', '0.2', 'none', '0.1'].reduce(say, started('nothing', '0.2', '0.1'));
    expect(names(session)).not.toContain('bad_supply');
    expect(names(session)).toContain('crystal+clock_chip');
    expect(names(session)).toHaveLength(4 + 6 + 1);
  });

  test('goes on to what else is wrong where a remedy mended a part', () => {
    const session = ['remedied', '5', 'none', '0.1'].reduce(say, started('nothing', '0.2', '0.1'));
    expect(names(session)[0]).toBe('no_power_good');
  });

  test('is worked out once for each session', () => {
    const session = started('nothing');
    expect(suspectsOf(session)).toBe(suspectsOf(session));
  });
});
