import fc from 'fast-check';
import { expect } from 'vitest';
import { problemsOfJob } from '../../engine/job/validate-job.ts';
import type { Job } from '../../engine/model/job.ts';
import { questionOf, replay } from '../../engine/run/index.ts';
import { benchTree, opened, walk } from '../helpers/bench.ts';

const tree = benchTree();
const session = walk(tree, ...opened);
const job: Job = {
  format: 1,
  kind: 'job',
  id: 'j',
  tree,
  laterTrees: [],
  board: null,
  entries: session.entries,
};

const odd = fc.oneof(
  fc.constantFrom(null, true, 0, -1, 1e308, '', '__proto__', 'constructor', '1/0', [], {}),
  fc.string({ unit: 'binary', maxLength: 8 }),
  fc.integer(),
);

/** One change somewhere inside: another value, a key less, a key more, two places swapped. */
const change = fc.record({
  how: fc.constantFrom('put', 'drop', 'add', 'twice'),
  way: fc.array(fc.nat(), { minLength: 1, maxLength: 9 }),
  value: odd,
});
type Change = typeof change extends fc.Arbitrary<infer T> ? T : never;

function changed(data: unknown, { how, way, value }: Change): void {
  let at: unknown = data;
  for (const [depth, step] of way.entries()) {
    if (typeof at !== 'object' || at === null) return;
    const here = at as Record<string, unknown>;
    const keys = Object.keys(here);
    const key = keys[step % Math.max(1, keys.length)];
    if (key === undefined) return;
    if (depth < way.length - 1) at = here[key];
    else if (how === 'put') here[key] = value;
    else if (how === 'drop') delete here[key];
    else if (how === 'add')
      Object.defineProperty(here, String(value), {
        value,
        enumerable: true,
        configurable: true,
        writable: true,
      });
    else if (Array.isArray(at)) at.push(here[key]);
  }
}

/** Whatever a job file holds: it is refused in words, or it can be walked on. */
export function mangledJobs(numRuns: number, seed?: number): void {
  fc.assert(
    fc.property(fc.array(change, { maxLength: 5 }), (changes) => {
      const data: unknown = JSON.parse(JSON.stringify(job));
      for (const each of changes) changed(data, each);
      const problems = problemsOfJob(data);
      for (const problem of problems) expect(problem).not.toBe('');
      if (problems.length > 0) return;
      const sound = data as Job;
      expect(questionOf(replay(sound.tree, sound.entries, sound)).ask).not.toBe('');
    }),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
}
