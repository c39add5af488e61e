import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { stringLiteral, tableLiteral } from '../../../engine/scxml/ecmascript.ts';

test('stringLiteral() is the text again once it is run, and holds no sign that XML cannot', () => {
  const unit = fc.oneof(
    fc.constantFrom("'", '"', '\\', '\n', '\u2028', '\u0000', '\uFFFF', '\uD800'),
    fc.string({ unit: 'binary' }),
  );
  fc.assert(
    fc.property(
      fc.array(unit).map((parts) => parts.join('')),
      (text) => {
        const literal = stringLiteral(text);
        expect(runInNewContext(literal)).toBe(text);
        expect(literal).not.toMatch(/[\u2028\u2029\uFFFE\uFFFF\n]/);
      },
    ),
    { numRuns: 1000 },
  );
});

test('tableLiteral() is the table again once it is run', () => {
  const rows = [
    ["it's", 'a "title"'],
    ['größe', ''],
  ] as const;
  expect(JSON.stringify(runInNewContext(`(${tableLiteral(rows)})`))).toBe(
    JSON.stringify(Object.fromEntries(rows)),
  );
});
