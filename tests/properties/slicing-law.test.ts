import { test } from 'vitest';
import { slicingLaw } from './slicing-law.ts';

test('3,000 random bodies give the same syntax in slices as in one piece (npm run soak takes more)', () => {
  slicingLaw(3000);
});
