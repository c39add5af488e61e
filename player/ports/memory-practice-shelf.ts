import type { PracticeShelf } from './practice-shelf.ts';

/** A shelf that forgets: for tests, and it can be made to refuse. */
export function memoryPracticeShelf(): PracticeShelf & { full: boolean } {
  const texts = new Map<string, string>();
  return {
    full: false,
    names: () => [...texts.keys()],
    read: (name) => texts.get(name) ?? null,
    write(name, text) {
      if (this.full) return false;
      texts.set(name, text);
      return true;
    },
    remove: (name) => void texts.delete(name),
  };
}
