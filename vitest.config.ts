import { availableParallelism } from 'node:os';
import { defineConfig } from 'vitest/config';

/** What touches neither a document nor a process of its own: these files share one load of the engine in each worker. */
const pure = ['architecture', 'engine', 'outside', 'properties', 'schema', 'trees'].map(
  (folder) => `tests/${folder}/**/*.test.ts`,
);

const limits = { testTimeout: 120_000, hookTimeout: 300_000 };

export default defineConfig({
  test: {
    maxWorkers: availableParallelism(),
    reporters: ['default', './tests/helpers/plain-line-reporter.ts'],
    globalSetup: ['./tests/helpers/build-once.ts'],
    projects: [
      { test: { ...limits, name: 'pure', include: pure, isolate: false } },
      { test: { ...limits, name: 'whole', include: ['tests/**/*.test.{ts,tsx}'], exclude: pure } },
    ],
  },
});
