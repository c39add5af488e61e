import { expect, test } from 'vitest';
import { formulaText } from '../../../engine/formula/formula-text.ts';
import { parseFormula } from '../../../engine/formula/index.ts';

test.each([
  ['cpu_clk/bus', 'cpu_clk / bus'],
  ['a - (b - c)', 'a - (b - c)'],
  ['(a - b) - c', 'a - b - c'],
  ['((a + b)) * 2', '(a + b) * 2'],
  ['a / (b * c)', 'a / (b * c)'],
  ['-(a + 5 V)', '-(a + 5 V)'],
  ['-a * 25.20 MHz', '-a * 25.2 MHz'],
  ['- -12V', '-(-12 V)'],
  ['factor(a/48MHz , b)', 'factor(a / 48 MHz, b)'],
  ['a≥b×2', 'a >= b * 2'],
])('formulaText() writes "%s" as "%s", which reads back as the same', (text, written) => {
  const parsed = parseFormula(text, { comparison: true });
  if (!parsed.ok) throw new Error('Expected a formula');
  expect(formulaText(parsed.value)).toBe(written);
  expect(parseFormula(written, { comparison: true })).toEqual(parsed);
});
