import { defineConfig } from 'vite';
import { compiledTrees } from './player/build/compiled-trees.ts';

export default defineConfig({
  root: 'player',
  base: './',
  publicDir: false,
  plugins: [compiledTrees({ from: 'trees' })],
  build: {
    outDir: '../dist/player',
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: { polyfill: false },
  },
});
