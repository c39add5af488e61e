import { join } from 'node:path';
import { defineConfig } from 'vite';

/** The benchmark as one file for Node, so that what is timed is the code as it ships. */
export default defineConfig({
  root: join(import.meta.dirname, '../..'),
  publicDir: false,
  logLevel: 'warn',
  build: {
    ssr: join(import.meta.dirname, 'run.ts'),
    outDir: join(import.meta.dirname, '../../dist/bench'),
    emptyOutDir: true,
    target: 'node20',
  },
});
