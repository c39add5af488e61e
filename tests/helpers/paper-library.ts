import type { Library } from '../../engine/library/library.ts';

/** Files that stand nowhere but here: text by path. */
export const paperLibrary = (files: Readonly<Record<string, string>>): Library => ({
  text: (path) => (Object.hasOwn(files, path) ? (files[path] ?? null) : null),
  picture: () => null,
  paths: () => Object.keys(files),
});
