import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.{ts,tsx}'],
    reporters: ['default', './tests/helpers/plain-line-reporter.ts'],
    globalSetup: ['./tests/helpers/build-once.ts'],
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
});
