import { test } from 'vitest';
import { killWalks } from './helpers/kill-walks.ts';

test('a browser killed in the middle of an answer has kept every answer before it (npm run soak kills more)', async () => {
  await killWalks(2, 20260301);
});
