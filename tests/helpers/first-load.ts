import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

const root = 'dist/player';

export interface Weight {
  readonly files: readonly string[];
  readonly text: string;
  readonly gzip: number;
}

/** The scripts and styles that the built player's page loads before its first screen: those it names, and
 *  what those import at once. Chunks that are imported later do not count. */
export function firstLoad(): { readonly script: Weight; readonly style: Weight } {
  const page = readFileSync(join(root, 'index.html'), 'utf8');
  const scripts = new Set<string>();
  for (const [, path] of page.matchAll(
    /<(?:script|link rel="modulepreload")[^>]*?(?:src|href)="([^"]+\.js)"/g,
  )) {
    if (path !== undefined) follow(join(root, path), scripts);
  }
  const styles = [...page.matchAll(/<link rel="stylesheet"[^>]*?href="([^"]+)"/g)].map(([, path]) =>
    join(root, path ?? ''),
  );
  return { script: weigh([...scripts]), style: weigh(styles) };
}

/** Everything that is loaded once a job stands on the screen. */
export function jobLoad(): Weight {
  const first = firstLoad().script.files;
  const seen = new Set<string>(first);
  const screen = readdirSync(join(root, 'assets')).find((name) => /^job-screen-.*\.js$/.test(name));
  if (screen === undefined) throw new Error('expected the built player to hold a job screen of its own');
  follow(join(root, 'assets', screen), seen);
  return weigh([...seen]);
}

function follow(path: string, seen: Set<string>): void {
  if (seen.has(path)) return;
  seen.add(path);
  const text = readFileSync(path, 'utf8');
  for (const [, from] of text.matchAll(
    /(?:import|export)\s*(?:[\w$*{},\s]+?from\s*)?["'](\.[^"']+\.js)["']/g,
  )) {
    if (from !== undefined) follow(join(dirname(path), from), seen);
  }
}

function weigh(files: readonly string[]): Weight {
  const texts = files.map((file) => readFileSync(file));
  return {
    files,
    text: texts.map(String).join('\n'),
    gzip: texts.reduce((sum, bytes) => sum + gzipSync(bytes, { level: 9 }).length, 0),
  };
}
