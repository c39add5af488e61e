import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import type { Library } from '../../engine/library/library.ts';
import { pictureUrl } from '../../engine/library/picture-url.ts';

/** The files under a folder of the disk; paths count from it. */
export function diskLibrary(folder: string): Library & { readonly paths: () => readonly string[] } {
  const read = (path: string): Buffer | null => {
    try {
      return readFileSync(join(folder, path));
    } catch {
      return null;
    }
  };
  return {
    text: (path) => read(path)?.toString('utf8') ?? null,
    picture: (path) => {
      const bytes = read(path);
      return bytes === null ? null : pictureUrl(path, bytes);
    },
    paths: () =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((path) => path.endsWith('.md'))
        .map((path) => path.split(sep).join('/'))
        .sort(),
  };
}
