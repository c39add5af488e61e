export { bandsUnder } from './bands-under.ts';
export { doubtOf, isTooClose, sharesOf } from './doubt-of.ts';
export { lacksTool } from './lacks-tool.ts';
export { noEquipment } from './no-equipment.ts';
export { parseInstrument } from './parse-instrument.ts';
export { plusMinusOf } from './plus-minus-of.ts';
export { printInstrument } from './print-instrument.ts';
export { settlerWords } from './settler-words.ts';
export { type Settler, settlers } from './settlers.ts';
