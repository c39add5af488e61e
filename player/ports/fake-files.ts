import type { Files } from './files.ts';

interface SavedFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

/** Keeps what was saved; `next` is what the next `open` brings, and `nextAll` the next `openAll`. */
export interface FakeFiles extends Files {
  readonly saved: SavedFile[];
  next: { readonly name: string; readonly text: string } | null;
  nextAll: readonly { readonly name: string; readonly text: string }[];
}

export function fakeFiles(): FakeFiles {
  const saved: SavedFile[] = [];
  return {
    saved,
    next: null,
    nextAll: [],
    save(name, type, text) {
      saved.push({ name, type, text });
    },
    async open() {
      return this.next;
    },
    async openAll() {
      return this.nextAll;
    },
  };
}
