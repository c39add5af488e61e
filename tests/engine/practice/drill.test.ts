import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { noEquipment } from '../../../engine/doubt/index.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import {
  arrange,
  askTwin,
  beliefOf,
  checksIn,
  type Drill,
  debriefOf,
  giveUp,
  hint,
  ledTo,
  measure,
  nameFault,
  nextOf,
  planDrill,
  predict,
  resultOf,
  startDrill,
} from '../../../engine/practice/index.ts';
import resultSchema from '../../../schema/drill-result.schema.json' with { type: 'json' };
import { benchTree, treeOf, wholeTree } from '../../helpers/bench.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const heeded = { heeded: true };
const drillOn = (tree: CompiledTree, fault: string, seed = 1, manner: 'free' | 'guided' = 'free'): Drill =>
  startDrill(planDrill(tree, { seed, manner, fault }), tree);

const along = (start: Drill): Drill => {
  let drill = start;
  for (let next = nextOf(drill); next !== null; next = nextOf(drill)) drill = measure(drill, next, heeded);
  return drill;
};

/** A seed without a slip in the way. */
const ledRight = (tree: CompiledTree, fault: string): Drill => {
  for (let seed = 1; ; seed += 1000) {
    const drill = along(drillOn(tree, fault, seed, 'guided'));
    if (ledTo(drill)?.id === fault) return drill;
  }
};

describe('a guided drill', () => {
  test.each(benchTree().faults.map(({ id }) => id))('leads to %s, whose remedy is proven', (fault) => {
    const drill = ledRight(benchTree(), fault === 'clock_chip' ? 'crystal' : fault);
    const led = ledTo(drill)?.id ?? '';
    const { right, proof, drill: after } = nameFault(drill, led);
    expect(right).toBe(true);
    expect(proof.length).toBeGreaterThan(0);
    expect(proof.every(({ good }) => good)).toBe(true);
    expect(after.state).toBe('found');
    expect(measure(after, 'v5', heeded)).toBe(after);
  });

  test('passes over no warning while it goes the way of the tree', () => {
    for (const { tree } of shippedTrees) {
      const drill = along(
        startDrill(planDrill(tree as CompiledTree, { seed: 9, manner: 'guided' }), tree as CompiledTree),
      );
      const passed = drill.events.flatMap((event) => (event.kind === 'measured' ? event.passed : []));
      expect(passed).toEqual([]);
    }
  });

  test('goes on by the way for what cannot be read where a tool is not there, or comes to an end', () => {
    for (const { tree } of shippedTrees) {
      for (const tool of ['scope', 'lens', 'POST card']) {
        const plan = planDrill(tree as CompiledTree, { seed: 4, manner: 'guided', lacking: [tool] });
        const drill = along(startDrill(plan, tree as CompiledTree));
        const taken = drill.events.flatMap((event) => (event.kind === 'measured' ? [event.reading] : []));
        expect(taken.length).toBeGreaterThan(0);
        for (const id of taken) expect(tree?.readings.find((one) => one.id === id)?.with).not.toContain(tool);
      }
    }
  });

  test('takes on this board what the debrief says the tree takes', () => {
    const drill = ledRight(benchTree(), 'no_power_good');
    const { along: minutes, checking } = debriefOf(giveUp(drill));
    expect(minutes).toBe(checking);
  });
});

describe('measure()', () => {
  test('brings the board into the conditions of the reading, and counts their minutes', () => {
    const tree = wholeTree();
    const drill = drillOn(tree, 'stuck_line');
    const check = checksIn(drill).find(({ reading }) => reading.id === 'v5_bare');
    expect(check).toMatchObject({ changes: { cards: 'out' }, minutes: 5 });
    const after = measure(drill, 'v5_bare', heeded);
    expect(after.conditions).toMatchObject({ cards: 'out' });
    expect(after.minutes).toBe(5);
    expect(after.events.map(({ kind, minute }) => [kind, minute])).toEqual([
      ['arranged', 3],
      ['measured', 5],
    ]);
    expect(arrange(after, { cards: 'out', moon: 'full' })).toBe(after);
  });

  test('counts power on a shorted rail as harm, and on a sound one as a warning passed over', () => {
    const harmOn = (fault: string) => {
      const event = measure(drillOn(wholeTree(), fault), 'v5', heeded).events.at(-1);
      return event?.kind === 'measured' ? event.passed.map(({ kind, harm }) => `${kind} ${harm}`) : [];
    };
    expect(harmOn('short_on_card')).toEqual(['only-if true']);
    expect(harmOn('stuck_line')).toEqual(['only-if false']);
  });

  test('counts no warning once it was seen that nothing is short', () => {
    const drill = measure(drillOn(wholeTree(), 'stuck_line'), 'r_v5', heeded);
    expect(checksIn(drill).find(({ reading }) => reading.id === 'v5')?.warnings).toEqual([]);
  });

  test('shows hazards until they are acknowledged, and counts them as passed over where they are not', () => {
    const drill = drillOn(benchTree(), 'crystal');
    expect(
      checksIn(drill)
        .find(({ reading }) => reading.id === 'cpu_clk')
        ?.warnings.map(({ text }) => text),
    ).toEqual([
      "Warning: The supply's case holds mains voltage. Keep it closed; a licensed person opens it",
      'Danger: The heat sink of this board stands at supply voltage',
    ]);
    const careless = measure(drill, 'cpu_clk', { heeded: false });
    expect(careless.events.at(-1)).toMatchObject({
      passed: [{ kind: 'hazard', harm: false }, { kind: 'hazard' }],
    });
    const careful = measure(drill, 'cpu_clk', heeded);
    expect(careful.events.at(-1)).toMatchObject({ passed: [] });
    expect(checksIn(careful).flatMap(({ warnings }) => warnings)).toEqual([]);
  });

  test('takes nothing that asks for a tool the trainee must do without', () => {
    const tree = wholeTree();
    const drill = startDrill(planDrill(tree, { seed: 1, manner: 'free', lacking: ['scope'] }), tree);
    expect(checksIn(drill).find(({ reading }) => reading.id === 'cpu_clk')?.lacks).toBe('scope');
    expect(measure(drill, 'cpu_clk', heeded)).toBe(drill);
    expect(measure(drill, 'clock_factor', heeded)).toBe(drill);
    expect(measure(drill, 'nothing', heeded)).toBe(drill);
  });
});

describe('nameFault()', () => {
  test('of the wrong fault: the proof fails, minutes are spent, and the drill goes on without that suspect', () => {
    const drill = drillOn(benchTree(), 'crystal');
    const { drill: after, right, proof } = nameFault(drill, 'bad_supply');
    expect(right).toBe(false);
    expect(proof.find(({ reading }) => reading === 'post_code')).toMatchObject({ good: false });
    expect(after.state).toBe('running');
    expect(after.minutes).toBe(15 + 2 + 2);
    expect(beliefOf(after).hypotheses.flatMap(({ faults }) => faults.map(({ id }) => id))).not.toContain(
      'bad_supply',
    );
    expect(nameFault(after, 'crystal').right).toBe(true);
  });

  test('of a remedy that needs something seen: a spare is lost where it was not so', () => {
    const tree = wholeTree();
    const passed = (fault: string) => {
      const event = nameFault(drillOn(tree, fault), 'crystal').drill.events.at(-1);
      return event?.kind === 'named' ? event.passed : [];
    };
    expect(passed('short_on_card')).toMatchObject([{ kind: 'only-if', harm: true }]);
    expect(passed('stuck_line')).toMatchObject([{ kind: 'only-if', harm: false }]);
  });

  test('of a part that something still wrong kills: as often as the author says', () => {
    const tree = benchTree();
    const killing = {
      ...tree,
      faults: tree.faults.map((fault) =>
        fault.id === 'bad_supply' ? { ...fault, brings: { crystal: 0.5 } } : fault,
      ),
    };
    const killed = Array.from({ length: 60 }, (_, seed) => {
      const { drill } = nameFault(drillOn(killing, 'bad_supply', seed * 50), 'crystal');
      const event = drill.events.at(-1);
      return event?.kind === 'named' && event.passed.some(({ harm }) => harm);
    }).filter(Boolean).length;
    expect(killed).toBeGreaterThan(12);
    expect(killed).toBeLessThan(48);
  });

  test('of none of these: right where the board has none, and no remedy is done', () => {
    const drill = drillOn(benchTree(), 'unlisted');
    expect(nameFault(drill, 'unlisted')).toMatchObject({
      right: true,
      proof: [],
      drill: { state: 'found', minutes: 0 },
    });
    expect(nameFault(drillOn(benchTree(), 'crystal'), 'unlisted').right).toBe(false);
  });
});

describe('hints', () => {
  test('say first what to measure and why, then what is suspected, and cost minutes once', () => {
    const drill = measure(drillOn(benchTree(), 'crystal'), 'v5', heeded);
    const first = hint(drill);
    expect(first.text).toMatch(/^Measure next: .*\. It shows .* if /);
    expect(first.cost).toBe(5);
    const second = hint(first.drill);
    expect(second.text).toMatch(/^By what was measured it is most likely one of these: .*%/);
    expect(second.drill.minutes - drill.minutes).toBe(15);
    expect(hint(second.drill)).toMatchObject({ cost: 0, drill: second.drill });
    expect(hint(measure(second.drill, 'pg', heeded)).cost).toBe(5);
  });

  test('never propose what is out of order', () => {
    for (let seed = 0; seed < 10; seed += 1) {
      const tree = wholeTree();
      const { text } = hint(startDrill(planDrill(tree, { seed, manner: 'free' }), tree));
      expect(text).not.toMatch(/\((v5|v5_bare)\)/);
    }
  });
});

describe('a known-good board', () => {
  test('shows on request what limits rest on, and the reading is judged by it from then on', () => {
    const drill = drillOn(wholeTree(), 'weak_reference');
    const asked = askTwin(measure(drill, 'ref_swing', heeded), 'ref_swing');
    expect(asked.events.at(-1)).toMatchObject({ kind: 'twin', typed: expect.stringMatching(/Vpp$/) });
    const share = (one: Drill): number => {
      const { hypotheses, shares } = beliefOf(one);
      return shares[hypotheses.findIndex(({ faults }) => faults[0]?.id === 'weak_reference')] ?? 0;
    };
    expect(share(asked)).toBeGreaterThan(0.8);
    expect(share(measure(drill, 'ref_swing', heeded))).toBeLessThan(0.5);
  });
});

describe('the debrief', () => {
  const played = (): Drill => {
    const tree = benchTree();
    const start = drillOn(tree, 'no_power_good', 11);
    const said = predict(start, 'v5', 'good');
    const checked = ['v5', 'story', 'pg', 'cpu_clk', 'post_code'].reduce(
      (drill, id) => measure(drill, id, heeded),
      said,
    );
    return nameFault(checked, 'no_power_good').drill;
  };

  test('tells what was hidden, what each check was worth, and when the evidence was enough', () => {
    const drill = played();
    const debrief = debriefOf(drill);
    expect(debrief.hidden?.id).toBe('no_power_good');
    expect(debrief.rightAtFirst).toBe(true);
    expect(debrief.steps.map(({ event }) => drill.events[event]?.kind ?? 'start')).toEqual([
      'start',
      'measured',
      'measured',
      'measured',
      'measured',
      'measured',
      'named',
    ]);
    for (const { shares } of debrief.steps)
      expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
    const [start, , story, pg] = debrief.steps;
    expect(start?.effective).toBeGreaterThan(3);
    expect(story?.bits).toBeCloseTo(0, 6);
    expect(pg?.bits).toBeGreaterThan(1);
    expect(debrief.idle.map((at) => (drill.events[at] as { reading: string }).reading)).toContain('story');
    expect(debrief.enough?.event).toBe(4);
    expect(debrief.enough?.after).toBeGreaterThan(0);
    expect(debrief.predictions).toMatchObject([{ reading: 'v5', said: 'good', right: true }]);
    expect(debrief.best).toBeLessThanOrEqual(debrief.checking);
    expect(debrief.steps.at(-1)).toMatchObject({ suspects: 1, effective: 1 });
  });

  test('of the same plan and the same steps is the same', () => {
    expect(debriefOf(played())).toEqual(debriefOf(played()));
  });

  test('of a stored drill is that of the drill itself: it is plain JSON', () => {
    const drill = played();
    expect(debriefOf(JSON.parse(JSON.stringify(drill)))).toEqual(debriefOf(drill));
  });

  test('gives a result that fits its schema', () => {
    const validate = new Ajv2020({ allowUnionTypes: true }).compile(resultSchema);
    const result = resultOf(played(), 'A. Trainee', '2026-03-01T08:00:00.000+01:00');
    expect(validate(JSON.parse(JSON.stringify(result))), JSON.stringify(validate.errors)).toBe(true);
    expect(validate({ ...result, outcome: 'lost' })).toBe(false);
    expect(result).toMatchObject({
      rightAtFirst: true,
      checks: 5,
      hints: 0,
      harm: 0,
      predictions: { right: 1, of: 1 },
    });
  });
});

test('own instruments decide how finely a value is shown', () => {
  const tree = treeOf(`---
format: 1
kind: tree
title: One rail
symptom: Dead
boards: [x]
readings:
  v5: { is: 5 V, unit: V, expect: 5 V ± 5 %, with: meter, source: common practice }
faults:
  fuse: { is: Fuse, shows: { v5: good }, source: common practice }
---

# One rail

## Rail

Read \`v5\`.

- otherwise → [Fuse](#fuse)

## Fuse

Fault \`fuse\`.

Fit one.

Prove \`v5\`.
`);
  const coarse = {
    name: 'old meter',
    tool: 'meter',
    ranges: [{ unit: 'V', upTo: '10', ofReading: '1/100', ofRange: '0', digits: 0, resolution: '1/10' }],
  };
  const plan = planDrill(tree, { seed: 1, manner: 'free', fault: 'fuse' });
  const drill = startDrill(plan, tree, null, { ...noEquipment, instruments: [coarse] });
  expect(measure(drill, 'v5', heeded).events.at(-1)).toMatchObject({
    typed: expect.stringMatching(/^\d\.\d V$/),
  });
});
