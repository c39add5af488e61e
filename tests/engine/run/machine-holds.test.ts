import { describe, expect, test } from 'vitest';
import { machineHolds } from '../../../engine/run/index.ts';
import { benchTree, wholeTree } from '../../helpers/bench.ts';
import { callTree } from '../../helpers/call-tree.ts';

describe('machineHolds()', () => {
  test('is true of every machine that the compiler makes', () => {
    for (const { machine } of [benchTree(), wholeTree(), callTree()])
      expect(machineHolds(machine)).toBe(true);
  });

  test.each([
    ['a beginning that is no state', { id: 'x', initial: 's-gone', states: {} }],
    [
      'a way to a state that is not there',
      { id: 'x', initial: 's-a', states: { 's-a': { on: { done: [{ target: '#x.s-b' }] } } } },
    ],
    [
      'a way to a brother that is not there',
      {
        id: 'x',
        initial: 's-a',
        states: { 's-a': { initial: 'b', states: { b: { on: { done: [{ target: 'c' }] } } } } },
      },
    ],
    [
      'states inside without a beginning',
      { id: 'x', initial: 's-a', states: { 's-a': { states: { b: {} } } } },
    ],
  ])('is false of %s', (_, machine) => {
    expect(machineHolds(machine)).toBe(false);
  });
});
