import { describe, expect, test } from 'vitest';
import { problemText, runCase, runFaults } from '../../../engine/cases/index.ts';
import { lostText } from '../../../engine/cases/lost-text.ts';
import { treeOf } from '../../helpers/bench.ts';
import { caseFrom, tree, treeText } from './small-library.ts';

const alone = { board: null, laterTrees: [] };
const run = (body: string, front?: string) => runCase(caseFrom(body, front), tree, alone);

describe('runCase()', () => {
  test('passes a case that leads where it says, decimal comma and code spans as a technician types them', () => {
    const { problem, path } = run(
      '1. `ohms` = 200\n2. `v5` = 0,3 V\n\nLeads to [Fuse](../trees/tree.md#fuse).',
    );
    expect(problem).toBeNull();
    expect(path.map(({ id }) => id)).toEqual(['ohms', 'five-volts', 'fuse']);
  });

  test('goes on to the proof of a mended board', () => {
    const { problem } = run(
      '1. ohms = 200\n2. v5 = 0.3\n3. remedied: F1; fuse = 0.20\n4. v5 = 5.01\n\nLeads to a mended board.',
    );
    expect(problem).toBeNull();
  });

  test('takes settings from the case, and the usual value of the others', () => {
    const { problem } = run(
      '1. ohms = 200\n2. v5 = 0.3\n\nLeads to [Fine](../trees/tree.md#fine).',
      'settings: { plug: new }\n',
    );
    expect(problem).toBeNull();
  });

  test('tells the section where the way parted from the expected one', () => {
    const { problem } = run('1. ohms = 200\n2. v5 = 5.0\n\nLeads to [Fuse](../trees/tree.md#fuse).');
    expect(problem && problemText(problem)).toBe(
      'it stands at "Fine" instead of "Fuse"; it parted at "Five volts", where it went on to "Fine"',
    );
  });

  test('tells what the walk still asks for when the answers are used up', () => {
    const { problem } = run('1. ohms = 200\n\nLeads to [Fuse](../trees/tree.md#fuse).');
    expect(problem && problemText(problem)).toBe(
      'it stands at "Five volts" and asks for v5 instead of "Fuse"; from "Five volts" it could still get there: more answers are needed',
    );
  });

  test('tells the answer that was not taken, and why', () => {
    const { problem } = run('1. ohms = purple\n2. v5 = 5\n\nLeads to [Fuse](../trees/tree.md#fuse).');
    expect(problem).toMatchObject({ kind: 'refused', step: 1, answer: 'ohms = purple' });
  });

  test('refuses an answer to a reading that is not asked for', () => {
    const { problem } = run('1. v5 = 5\n\nLeads to [Fine](../trees/tree.md#fine).');
    expect(problem).toMatchObject({ kind: 'refused', step: 1 });
  });

  test('goes back where the case says so', () => {
    const { problem } = run(
      '1. ohms = 3\n2. back\n3. ohms = 300\n4. v5 = 1\n\nLeads to [Fuse](../trees/tree.md#fuse).',
    );
    expect(problem).toBeNull();
  });
});

describe('runFaults()', () => {
  test('finds every fault of a sound tree on the boards it fits, and tells where the others go', () => {
    const [fuse] = runFaults(tree);
    expect(fuse?.lost && lostText(fuse.lost)).toBe(
      'with plug new it stands at "Fine" instead of "Fuse"; it parted at "Five volts", where it went on to "Fine"',
    );
  });

  test('counts the walks it took', () => {
    const sound = treeOf(treeText.replace('v5 is low and plug is old', 'v5 is low'), 'tree');
    expect(runFaults(sound)).toMatchObject([{ walks: 2, more: false, lost: null }]);
  });
});
