import { expect, test } from 'vitest';
import { withUnits } from '../../../player/parts/with-units.ts';

test('withUnits() keeps a number and its unit on one line, and leaves other words alone', () => {
  const written = '300 V, 47 kΩ, 850 mVpp, 60 °C and 5 % in 3 steps, 4 months, 2 VIA';
  expect(withUnits(written).replaceAll('\u00a0', '_')).toBe(
    '300_V, 47_kΩ, 850_mVpp, 60_°C and 5_% in 3 steps, 4 months, 2 VIA',
  );
});
