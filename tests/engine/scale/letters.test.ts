import { expect, test } from 'vitest';
import { parseFormula } from '../../../engine/formula/index.ts';
import { parseScale } from '../../../engine/scale/index.ts';

test('names of settings and bands may have letters of any language', () => {
  expect(parseFormula('größe * 2')).toMatchObject({
    ok: true,
    value: { left: { kind: 'name', name: 'größe' } },
  });
  expect(parseScale('zu-früh < 0.8 V < gut', 'V')).toMatchObject({
    ok: true,
    value: { bands: ['zu-früh', 'gut'] },
  });
  expect(parseScale('low < 4.7 Ω < good < 5 kΩ < high', 'Ω')).toMatchObject({ ok: true });
});
