import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Library } from '../../engine/library/library.ts';
import { paperLibrary } from './paper-library.ts';

/** The Markdown files under a folder of the disk. */
export const folderLibrary = (folder: string): Library =>
  paperLibrary(
    Object.fromEntries(
      readdirSync(folder, { recursive: true })
        .map((name) => String(name).replaceAll('\\', '/'))
        .filter((name) => name.endsWith('.md'))
        .map((name) => [name, readFileSync(join(folder, name), 'utf8')]),
    ),
  );
