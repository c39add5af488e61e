import { test } from 'vitest';
import { killWalks } from '../browser/helpers/kill-walks.ts';

test('40 browsers killed in the middle of an answer have kept every answer before it', async () => {
  await killWalks(40, 1 + (Date.now() % 100_000));
});
