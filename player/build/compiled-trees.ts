import { resolve } from 'node:path';
import type { Plugin } from 'vite';
import { compileLibrary } from './compile-library.ts';

interface CompiledTreesOptions {
  /** Folder with `trees/`, `boards/` and what they use, from where Vite was started. */
  readonly from: string;
}

/** Ships the compiled trees and board sheets of a folder with the player: `trees/<id>.json`, `boards/<id>.json`,
 *  and a list of each. */
export function compiledTrees({ from }: CompiledTreesOptions): Plugin {
  const folder = resolve(from);
  return {
    name: 'compiled-trees',

    generateBundle() {
      for (const [fileName, source] of compileLibrary(folder))
        this.emitFile({ type: 'asset', fileName, source });
    },

    configureServer(server) {
      let emitted = compileLibrary(folder);
      server.watcher.add(folder);
      server.watcher.on('all', (_event, path) => {
        if (!path.startsWith(folder)) return;
        emitted = compileLibrary(folder);
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
