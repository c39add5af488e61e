import { test } from 'vitest';
import { mangledTexts } from './mangled-texts.ts';

test('compileTree() keeps its laws on 1,000 mangled texts (npm run soak takes more)', () => {
  mangledTexts(1000);
});
