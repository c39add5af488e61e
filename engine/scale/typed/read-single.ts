import type { Member } from '../../model/observation.ts';
import type { SingleMeasure } from '../../model/reading.ts';
import type { Taken } from '../../model/refusal.ts';
import { readTyped } from '../../quantity/index.ts';
import { marked } from './marked.ts';
import type { Read } from './read.ts';
import { readBeeps } from './read-beeps.ts';
import { readCode } from './read-code.ts';
import { readOption } from './read-option.ts';

type Single = Read<Member['understood']>;

const reads: {
  readonly [Kind in SingleMeasure['kind']]: (
    measure: Extract<SingleMeasure, { kind: Kind }>,
    typed: string,
  ) => Taken<Single>;
} = {
  quantity: ({ unit, scale }, typed) => readTyped(typed, { unit, allowNone: scale.bands.includes('none') }),
  options: ({ options }, typed) =>
    marked(
      typed,
      (text) => readOption(options, text),
      (option) => ({ kind: 'option', option }),
    ),
  codes: (measure, typed) =>
    marked(
      typed,
      (text) => readCode(measure, text),
      (code) => ({ kind: 'code', code }),
    ),
  beeps: (measure, typed) =>
    marked(
      typed,
      (text) => readBeeps(measure, text),
      (pattern) => ({ kind: 'beeps', pattern }),
    ),
};

/** What was typed for one thing. */
export function readSingle(measure: SingleMeasure, typed: string): Taken<Single> {
  return reads[measure.kind](measure as never, typed);
}
