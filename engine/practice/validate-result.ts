import { Ajv2020 } from 'ajv/dist/2020.js';
import schema from '../../schema/drill-result.schema.json' with { type: 'json' };

const validate = new Ajv2020({ allErrors: true, allowUnionTypes: true }).compile(schema);

/** Why `data` is not the result of a drill: a sentence for each thing that is wrong, none where it is one. */
export function problemsOfResult(data: unknown): readonly string[] {
  if (validate(data)) return [];
  return (validate.errors ?? []).map(
    ({ instancePath, message }) =>
      `${instancePath === '' ? 'the file' : instancePath} ${message ?? 'is wrong'}`,
  );
}
