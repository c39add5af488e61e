import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import compiledBoardSchema from '../../schema/compiled-board.schema.json' with { type: 'json' };
import compiledTreeSchema from '../../schema/compiled-tree.schema.json' with { type: 'json' };
import jobSchema from '../../schema/job.schema.json' with { type: 'json' };
import machineSchema from '../../schema/machine.schema.json' with { type: 'json' };
import type { Job } from '../model/job.ts';
import { machineHolds, replay } from '../run/index.ts';

const ajv = new Ajv2020({
  allErrors: false,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
  discriminator: true,
});
ajv.addSchema([machineSchema, compiledTreeSchema, compiledBoardSchema, jobSchema]);

/** Why `data` is not a job: one sentence for each thing that is wrong, none where it is one. */
export function problemsOfJob(data: unknown): readonly string[] {
  const shape = problems(jobSchema.$id, data);
  return shape.length > 0 ? shape : problemsOfWalk(data as Job);
}

const torn = 'its tree does not hold together';

/** A tree can have the right shape and still not hold together, as when its machine lacks a state. */
function problemsOfWalk(job: Job): readonly string[] {
  const { tree, entries } = job;
  if (entries[0]?.kind !== 'opened') return ['its first entry does not open it'];
  if (![tree, ...job.laterTrees].every(({ machine }) => machineHolds(machine))) return [torn];
  try {
    replay(tree, entries, job);
    return [];
  } catch {
    return [torn];
  }
}

/** Why `data` is not a compiled tree. */
export const problemsOfCompiledTree = (data: unknown): readonly string[] =>
  problems(compiledTreeSchema.$id, data);

function problems(id: string, data: unknown): readonly string[] {
  const validate = ajv.getSchema(id) as ValidateFunction;
  if (validate(data)) return [];
  return (validate.errors ?? []).map(
    ({ instancePath, message }) =>
      `${instancePath === '' ? 'the file' : instancePath} ${message ?? 'is wrong'}`,
  );
}
