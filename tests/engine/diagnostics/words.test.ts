import { expect, describe as group, test } from 'vitest';
import { describe } from '../../../engine/diagnostics/index.ts';
import { compileFixture } from './compile-fixture.ts';
import { fixtureNames } from './fixtures.ts';

const told = fixtureNames().flatMap((code) => {
  const found = compileFixture(code).find((each) => each.code === code);
  return found === undefined ? [] : [{ code, ...describe(found) }];
});

group('the words of every diagnostic', () => {
  test.each(told)(
    'of $code are sentences without a full stop, and short enough to read',
    ({ wrong, mend }) => {
      for (const sentence of [wrong, mend]) {
        expect(sentence).not.toMatch(/[^.`]\.$|\n|undefined|\[object|NaN|!$/);
        expect(sentence).toMatch(/^[\p{L}"\d]/u);
        expect(sentence.length).toBeLessThan(300);
      }
    },
  );
});
