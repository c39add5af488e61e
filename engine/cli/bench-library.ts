import { relative, resolve, sep } from 'node:path';
import type { Library } from '../library/library.ts';
import { pictureUrl } from '../library/picture-url.ts';
import type { Bench } from './bench.ts';

/** A path of the disk as one of the library, whose root is the disk's. */
export const libraryPath = (path: string): string => resolve(path).split(sep).join('/').replace(/^\//, '');

/** A path of the library as one of the disk, from the present folder. */
export const diskPath = (path: string): string =>
  relative(process.cwd(), sep === '/' ? `/${path}` : path) || '.';

/** The disk as the compiler sees it. What it asks for is read when it first asks, and then it is run again. */
export class BenchLibrary {
  private readonly bench: Bench;
  private readonly texts = new Map<string, string | null>();
  private readonly pictures = new Map<string, string | null>();
  private readonly asked = new Set<string>();
  private readonly shown = new Set<string>();
  private readonly library: Library = {
    text: (path) => this.found(path, this.texts, this.asked),
    picture: (path) => this.found(path, this.pictures, this.shown),
    paths: () => [...this.texts].flatMap(([path, text]) => (text === null ? [] : [path])),
  };

  constructor(bench: Bench) {
    this.bench = bench;
  }

  /** A file whose text is known already. */
  add(path: string, text: string): void {
    this.texts.set(libraryPath(path), text);
  }

  /** What `compile` makes with every file that it asks for. */
  async with<T>(compile: (library: Library) => T): Promise<T> {
    for (;;) {
      const made = compile(this.library);
      if (this.asked.size + this.shown.size === 0) return made;
      for (const path of this.asked) this.texts.set(path, await this.read(path));
      for (const path of this.shown) this.pictures.set(path, await this.look(path));
      this.asked.clear();
      this.shown.clear();
    }
  }

  private found(path: string, known: ReadonlyMap<string, string | null>, wanted: Set<string>): string | null {
    if (!known.has(path)) wanted.add(path);
    return known.get(path) ?? null;
  }

  private read(path: string): Promise<string | null> {
    return this.bench.readText(diskPath(path)).catch(() => null);
  }

  /** Nobody looks at pictures in a terminal, but a job carries those of its board along. */
  private look(path: string): Promise<string | null> {
    return this.bench.readBytes(diskPath(path)).then(
      (bytes) => pictureUrl(path, bytes),
      () => null,
    );
  }
}
