import { describe, expect, test } from 'vitest';
import { caseOf, compileCase, runCase } from '../../../engine/cases/index.ts';
import type { Job } from '../../../engine/model/job.ts';
import { say, walk } from '../../helpers/bench.ts';
import { library, tree } from './small-library.ts';

const names = { title: 'From the bench', tree: '../trees/tree.md', board: null };

function roundTrip(...answers: readonly string[]) {
  const session = answers.reduce(say, walk(tree, 'open: Board 7; A. Owner; dark'));
  const job: Job = {
    format: 1,
    kind: 'job',
    id: 'j',
    tree,
    laterTrees: [],
    board: null,
    entries: session.entries,
  };
  const text = caseOf(job, names);
  const { value, diagnostics } = compileCase(text, { id: 'c', path: 'cases/c.md', library });
  return { text, diagnostics, result: value && runCase(value, tree, job) };
}

describe('caseOf()', () => {
  test.each([
    [['plug := old', 'ohms = 200', 'v5 = 0,3 V']],
    [['plug := new', 'ohms = 3 Ω']],
    [['plug := ?', 'ohms = 200', 'v5 = 3', 'as if fine']],
    [['plug := old', 'note: smells', 'ohms = 200', 'back', 'same', 'cannot read: no meter']],
    [['plug := old', 'ohms = 200', 'v5 = 0.3', 'remedied: F1; fuse = 0.20', 'v5 = 5.01 V']],
    [['plug := old', 'ohms = 200', 'v5 = 3', 'retake v5 = 5']],
    [['plug := old', 'ohms = 200', 'v5 = 0.3', 'decline: no fuse']],
  ])('writes %j as a case that passes and leads to where the job stands', (answers) => {
    const { text, diagnostics, result } = roundTrip(...answers);
    expect(diagnostics, text).toEqual([]);
    expect(result?.problem, text).toBeNull();
  });
});
