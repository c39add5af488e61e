import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';
import { compileTree } from '../../engine/compile.ts';
import { describe } from '../../engine/diagnostics/describe.ts';
import { formatDiagnostic } from '../../engine/diagnostics/format-diagnostic.ts';
import type { CompiledTree } from '../../engine/model/compiled-tree.ts';
import { listingOf } from './listing-of.ts';

interface CompiledTreesOptions {
  /** Folder of tree files, from where Vite was started. */
  readonly from: string;
}

/** Files by their path in the built player. */
type Emitted = ReadonlyMap<string, string>;

/** Compiles every tree of a folder to `trees/<id>.json`, and lists them in `trees/index.json`. A tree with
 *  errors is left out and reported on the terminal; the others stay. */
export function compiledTrees({ from }: CompiledTreesOptions): Plugin {
  const folder = resolve(from);
  return {
    name: 'compiled-trees',

    generateBundle() {
      for (const [fileName, source] of compileFolder(folder))
        this.emitFile({ type: 'asset', fileName, source });
    },

    configureServer(server) {
      let emitted = compileFolder(folder);
      server.watcher.add(folder);
      server.watcher.on('all', (_event, path) => {
        if (!path.startsWith(folder)) return;
        emitted = compileFolder(folder);
        server.ws.send({ type: 'full-reload' });
      });
      server.middlewares.use((request, response, next) => {
        const text = emitted.get(decodeURIComponent((request.url ?? '').replace(/^\/|\?.*$/g, '')));
        if (text === undefined) return next();
        response.setHeader('Content-Type', 'application/json');
        response.end(text);
      });
    },
  };
}

function compileFolder(folder: string): Emitted {
  const files = readdirSync(folder).filter((name) => name.endsWith('.md'));
  const trees = files.sort().flatMap((name) => compileFile(join(folder, name), name.slice(0, -'.md'.length)));
  const index = { format: 1, trees: trees.map(listingOf) };
  return new Map([
    ['trees/index.json', JSON.stringify(index)],
    ...trees.map((tree) => [`trees/${tree.id}.json`, JSON.stringify(tree)] as const),
  ]);
}

function compileFile(path: string, id: string): readonly CompiledTree[] {
  const text = readFileSync(path, 'utf8');
  const { tree, diagnostics } = compileTree(text, { id });
  const told = diagnostics.filter((one) => tree === null || describe(one).severity !== 'hint');
  for (const one of told) console.warn(formatDiagnostic(path, text, one));
  if (tree === null) console.error(`${path}: left out, because it has errors`);
  return tree === null ? [] : [tree];
}
