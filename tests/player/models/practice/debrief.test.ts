import { describe, expect, test } from 'vitest';
import type { Drill } from '../../../../engine/practice/drill.ts';
import {
  giveUp,
  measure,
  nameFault,
  planDrill,
  predict,
  startDrill,
} from '../../../../engine/practice/index.ts';
import { debriefShown } from '../../../../player/models/practice/debrief-shown.ts';
import { benchTree } from '../../../helpers/bench.ts';

const tree = benchTree();
const laidOut = (fault: string): Drill =>
  startDrill(planDrill(tree, { seed: 7, manner: 'free', fault }), tree);
const taken = (drill: Drill, ...readings: readonly string[]): Drill =>
  readings.reduce((at, reading) => measure(at, reading, { heeded: true }), drill);

describe('debriefShown()', () => {
  const played = nameFault(
    nameFault(taken(predict(laidOut('crystal'), 'v5', 'low'), 'v5', 'pg', 'cpu_clk', 'pg'), 'clock_chip')
      .drill,
    'crystal',
  ).drill;
  const shown = debriefShown(played);

  test('numbers checks and names in their order, with the suspects before and after each', () => {
    expect(shown.steps.map(({ number, kind, what }) => [number, kind, what])).toEqual([
      [1, 'told', '5 V at the slot'],
      [2, 'told', 'Power-good, one second after switch-on'],
      [3, 'told', 'CPU clock at the socket'],
      [4, 'told nothing', 'Power-good, one second after switch-on'],
      [5, 'wrong', 'Named: The clock chip is dead'],
      [6, 'right', 'Named: The crystal is cracked'],
    ]);
    for (const [index, step] of shown.steps.slice(1).entries())
      expect(step.before).toBeCloseTo(shown.steps[index]?.after ?? 0, 9);
    expect(shown.steps[0]?.predicted).toEqual({ said: 'low', right: false });
  });

  test('draws from the start to the proof: time never runs back, and nothing is open at the end', () => {
    const minutes = shown.moments.map(({ minute }) => minute);
    expect(minutes).toEqual(minutes.toSorted((a, b) => a - b));
    expect(shown.moments[0]?.minute).toBe(0);
    expect(shown.moments.at(-1)).toEqual({ minute: played.minutes, bits: 0, right: 1 });
  });

  test('says what was idle, wrong, and foretold', () => {
    const text = shown.lines.map((one) => one.text).join(' ');
    for (const words of [
      'Check 4 told nothing.',
      'Named, and not the cause: The clock chip is dead.',
      'came true 0 of 1 times',
      'No warning was passed over.',
    ])
      expect(text).toContain(words);
  });

  test('counts what is kept of it', () => {
    expect(shown.outcome).toMatchObject({ family: tree.title, rightAtFirst: false, hints: 0 });
    expect(shown.result('Ada', '2031-04-05T18:30:00+02:00')).toMatchObject({
      kind: 'drill-result',
      name: 'Ada',
    });
  });

  test('says what a board had that was given up, and that nothing was found', () => {
    const given = debriefShown(giveUp(taken(laidOut('bad_supply'), 'v5')));
    expect([given.found, given.hidden]).toEqual([false, 'The supply gives no 5 V']);
    expect(given.steps.at(-1)?.kind).toBe('given up');
  });

  test('says when it was enough, and what was spent after that', () => {
    const late = debriefShown(
      nameFault(taken(laidOut('bad_supply'), 'v5', 'pg', 'cpu_clk', 'v5'), 'bad_supply').drill,
    );
    expect(late.enough).toEqual({ minute: 2, says: 'enough after minute 2' });
    expect(late.lines[0]).toEqual({ tone: 'bad', text: 'You knew enough after minute 2; you spent 6 more.' });
  });

  test('passes a warning on that was passed over', () => {
    const hasty = debriefShown(giveUp(measure(laidOut('crystal'), 'v5', { heeded: false })));
    expect(hasty.steps[0]?.warned).toBe(true);
    expect(hasty.lines.map((one) => one.text).join(' ')).toMatch(/warnings? (was|were) passed over/);
  });
});
