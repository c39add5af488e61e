import type { Library } from '../library/library.ts';
import type { Procedure } from '../link/procedures/procedure.ts';
import type { ForeignFacts } from '../model/foreign-facts.ts';
import type { OpenFile } from './open-file.ts';

/** A file that others use, and how many errors it has of its own. */
export interface Loaded<T> {
  readonly value: T;
  readonly errors: number;
}

/** The files of a library, each read and compiled once. */
export interface Shelf {
  open(path: string): OpenFile | null;
  shared(path: string): Loaded<ForeignFacts>;
  /** Null where the file has errors. */
  procedure(path: string): Loaded<Procedure | null>;
  /** Every Markdown file there is, as far as that is known. */
  paths(): readonly string[];
  /** Nothing is known of any file but the one that is compiled. */
  readonly alone: boolean;
}

/** How a file becomes what others use; they need the shelf themselves, for the files that it names in turn. */
export interface Loaders {
  readonly open: (text: string) => OpenFile;
  readonly shared: (path: string, shelf: Shelf) => Loaded<ForeignFacts>;
  readonly procedure: (path: string, shelf: Shelf) => Loaded<Procedure | null>;
}

export function openShelf(library: Library, alone: boolean, loaders: Loaders): Shelf {
  const once = <T>(make: (path: string) => T): ((path: string) => T) => {
    const made = new Map<string, T>();
    return (path) => {
      const before = made.get(path);
      if (before !== undefined || made.has(path)) return before as T;
      const value = make(path);
      made.set(path, value);
      return value;
    };
  };
  const shelf: Shelf = {
    open: once((path) => {
      const text = library.text(path);
      return text === null ? null : loaders.open(text);
    }),
    shared: once((path) => loaders.shared(path, shelf)),
    procedure: once((path) => loaders.procedure(path, shelf)),
    paths: () => library.paths?.() ?? [],
    alone,
  };
  return shelf;
}
