import { defineConfig } from 'vitest/config';

/** `npm run soak [-- NAME]`: the long runs. Each has a slice in `npm test`. */
export default defineConfig({
  test: {
    root: new URL('../..', import.meta.url).pathname,
    include: ['tests/soak/*.soak.ts'],
    reporters: ['verbose', './tests/helpers/plain-line-reporter.ts'],
    globalSetup: ['./tests/helpers/build-once.ts'],
    testTimeout: 3_600_000,
  },
});
