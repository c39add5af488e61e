import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The command as one file that Node runs; packages stay in node_modules. */
export default defineConfig({
  root: here('../..'),
  publicDir: false,
  logLevel: 'warn',
  build: {
    ssr: here('deadboard.ts'),
    outDir: here('../../dist/cli'),
    emptyOutDir: true,
    target: 'node20',
  },
});
