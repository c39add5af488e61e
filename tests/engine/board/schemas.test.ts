import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import compiledBoardSchema from '../../../schema/compiled-board.schema.json' with { type: 'json' };
import compiledTreeSchema from '../../../schema/compiled-tree.schema.json' with { type: 'json' };
import machineSchema from '../../../schema/machine.schema.json' with { type: 'json' };
import { boardOf } from './sheet.ts';

const ajv = new Ajv2020({
  allErrors: true,
  strict: true,
  strictRequired: false,
  allowUnionTypes: true,
  discriminator: true,
});
ajv.addSchema([machineSchema, compiledTreeSchema]);
const validate = ajv.compile(compiledBoardSchema);

const board: CompiledBoard = {
  ...boardOf(`
settings: { bus: 40 MHz, cpu: sx }
jumpers:
  JP1: { is: Bus clock, positions: [1-2, 2-3] }
tables:
  bus: { JP1 1-2: 25 MHz, JP1 2-3: 40 MHz }
fitting: { memory: { is: Memory, sockets: [A, B], together: [[A, B]] } }
readings:
  v5: { expect: 5 V ± 3 %, source: legend }
  post: { codes: { 00: none, 01..1F: early }, source: x }
points:
  v5: [{ is: contact 10 }, { is: ground }]
references:
  - { date: 2024-02-29, instrument: meter, readings: { v5: 5.02 V } }`),
  pictures: [{ id: 'top', is: 'component side', url: 'data:image/png;base64,AAAA', mirrored: false }],
};

const accepts = (data: unknown): boolean => validate(structuredClone(data));

describe('schema/compiled-board.schema.json', () => {
  test('takes what the compiler makes', () => {
    expect(accepts(board), JSON.stringify(validate.errors)).toBe(true);
  });

  test.each<[string, unknown]>([
    ['another kind', { ...board, kind: 'compiled-tree' }],
    ['a key too many', { ...board, more: 1 }],
    ['a key too few', { ...board, points: undefined }],
    [
      'a picture from elsewhere',
      { ...board, pictures: [{ ...board.pictures[0], url: 'https://example.org/a.png' }] },
    ],
    ['a point outside its picture', { ...board, points: { v5: [{ is: '', picture: 'top', x: 1.2, y: 0 }] } }],
    ['a row without positions', { ...board, tables: [{ setting: 'bus', rows: [{ at: {}, value: 'a' }] }] }],
    ['a value that is no exact number', { ...board, settings: { bus: { value: '4.5', unit: 'MHz' } } }],
    ['a reference without its day', { ...board, references: [{ ...board.references[0], date: 'May' }] }],
    ['a reading without its measure', { ...board, readings: [{ reading: 'v5', source: null }] }],
  ])('refuses %s', (_, data) => {
    expect(accepts(JSON.parse(JSON.stringify(data)))).toBe(false);
  });
});
