import { inRoundFigures, printQuantity } from '../quantity/index.ts';
import type { Settler } from './settler.ts';

type Words = {
  readonly [Kind in Settler['kind']]: (settler: Extract<Settler, { kind: Kind }>) => string;
};

const words: Words = {
  instrument: ({ instrument, plusMinus }) =>
    `the ${instrument} (± ${printQuantity(inRoundFigures(plusMinus))})`,
  range: ({ instrument, upTo, plusMinus }) =>
    `the ${printQuantity(upTo)} range of the ${instrument} (± ${printQuantity(inRoundFigures(plusMinus))})`,
  average: ({ of, plusMinus }) =>
    `the average of ${of} readings (± ${printQuantity(inRoundFigures(plusMinus))})`,
  tries: ({ of }) => `${of} tries in a row`,
  twin: () => 'the same reading on a known-good board',
  setting: ({ setting }) => `the value of "${setting}"`,
};

/** A settler as part of a sentence: `the 6 V range of the bench meter (± 17.75 mV)`. */
export const settlerWords = (settler: Settler): string => words[settler.kind](settler as never);
