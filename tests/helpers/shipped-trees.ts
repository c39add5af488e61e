import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Compiled, compileTree } from '../../engine/compile.ts';
import { folderLibrary } from './folder-library.ts';

/** Everything that the trees use. */
export const shippedLibrary = folderLibrary(fileURLToPath(new URL('../../trees/', import.meta.url)));
const folder = fileURLToPath(new URL('../../trees/trees/', import.meta.url));

export interface Shipped extends Compiled {
  readonly id: string;
  readonly text: string;
}

/** Every tree of the library, compiled. */
export const shippedTrees: readonly Shipped[] = readdirSync(folder)
  .filter((name) => name.endsWith('.md'))
  .map((name) => {
    const text = readFileSync(folder + name, 'utf8');
    const id = name.replace(/\.md$/, '');
    return { id, text, ...compileTree(text, { id, path: `trees/${name}`, library: shippedLibrary }) };
  });
