import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { diagnosticsPage } from './diagnostics-page.ts';

const path = 'schema/diagnostics.md';

test('schema/diagnostics.md has a row for each code that says what the checker says', () => {
  const page = diagnosticsPage();
  if (process.env.UPDATE === '1') writeFileSync(path, page);
  expect(existsSync(path), `${path} is missing; UPDATE=1 writes it`).toBe(true);
  expect(readFileSync(path, 'utf8')).toBe(page);
});
