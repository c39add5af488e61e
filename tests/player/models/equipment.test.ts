import { describe, expect, test } from 'vitest';
import { noEquipment } from '../../../engine/doubt/index.ts';
import { createEquipmentForm } from '../../../player/models/equipment-form.ts';
import { rangeWords } from '../../../player/models/instrument-words.ts';
import {
  equippedWith,
  keepEquipment,
  keptEquipment,
  sameEquipment,
} from '../../../player/models/kept-equipment.ts';
import { benchTree, walk } from '../../helpers/bench.ts';
import { benchPorts } from '../helpers/bench-ports.ts';

const line = 'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV; 60 V ± (0.8 % + 3) at 10 mV';

function formWith(...lines: readonly string[]) {
  const { settings } = benchPorts();
  const form = createEquipmentForm(settings);
  for (const text of lines) {
    form.typed.value = text;
    if (!form.add()) throw new Error(`"${text}" was not taken`);
  }
  return { settings, form };
}

describe('createEquipmentForm()', () => {
  test('keeps every change on the device at once', () => {
    const { settings, form } = formWith(line);
    form.rule('simple');
    form.lack('scope', true);
    const kept = keptEquipment(settings);
    expect(kept).toEqual(form.equipment.value);
    expect(kept.instruments.map(({ name, tool, ranges }) => [name, tool, ranges.length])).toEqual([
      ['bench meter', 'meter', 2],
    ]);
    expect([kept.rule, kept.lacking]).toEqual(['simple', ['scope']]);
  });

  test('puts a line of the same name in the place of the old one', () => {
    const { form } = formWith(line, 'scope (scope): 100 MHz ± 25 ppm', 'bench meter (meter): 10 V ± 1 %');
    expect(form.equipment.value.instruments.map(({ name, ranges }) => [name, ranges.length])).toEqual([
      ['bench meter', 1],
      ['scope', 1],
    ]);
  });

  test('takes nothing in that is not understood, and leaves it in the field', () => {
    const { form } = formWith();
    form.typed.value = 'my meter';
    expect(form.add()).toBe(false);
    expect([form.typed.value, form.equipment.value]).toEqual(['my meter', noEquipment]);
  });

  test('puts a line back in the field to change it, and takes an instrument out', () => {
    const { form } = formWith(line);
    form.edit('bench meter');
    expect(form.typed.value).toBe(line);
    form.remove('bench meter');
    form.lack('scope', true);
    form.lack('scope', false);
    expect(form.equipment.value).toEqual(noEquipment);
  });
});

describe('keptEquipment()', () => {
  test.each([
    '',
    '{',
    'null',
    '[]',
    '{"instruments":"meter","lacking":[1],"rule":"wild"}',
    '{"instruments":["?"]}',
  ])('is that of an empty bench where the device keeps %j', (text) => {
    const { settings } = benchPorts();
    settings.write('equipment', text);
    expect(keptEquipment(settings)).toEqual(noEquipment);
  });

  test('is the same after it was kept', () => {
    const { form } = formWith(line);
    const { settings } = benchPorts();
    keepEquipment(settings, form.equipment.value);
    expect(sameEquipment(keptEquipment(settings), form.equipment.value)).toBe(true);
  });
});

describe('equippedWith()', () => {
  test('notes the equipment in a job once', () => {
    const { form } = formWith(line);
    const opened = walk(benchTree(), 'open: Board 7; ; ');
    const equipped = equippedWith(opened, form.equipment.value, '2031-04-05T10:00:00+02:00');
    expect(equipped.entries.map(({ kind }) => kind)).toEqual(['opened', 'equipped']);
    expect(equippedWith(equipped, form.equipment.value, '')).toBe(equipped);
    expect(equippedWith(opened, noEquipment, '')).toBe(opened);
  });
});

test('rangeWords() tells how far off each range can be at its top', () => {
  const { form } = formWith(line);
  const [meter] = form.equipment.value.instruments;
  // computed: 0.5 % of 6 V + 2 mV; 0.8 % of 60 V + 30 mV
  expect(meter && rangeWords(meter)).toEqual([
    { upTo: '6 V', plusMinus: '± 32 mV' },
    { upTo: '60 V', plusMinus: '± 510 mV' },
  ]);
});
