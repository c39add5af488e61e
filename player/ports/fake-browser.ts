import type { Browser } from './browser.ts';

/** A browser that prints nowhere and counts its names and seeds. */
export function fakeBrowser(start = '/'): Browser & { printed: number; copied: string[] } {
  let place = start;
  let named = 0;
  let seeded = 0;
  const hearers = new Set<(place: string) => void>();
  return {
    printed: 0,
    copied: [],
    print() {
      this.printed += 1;
    },
    askToKeepData() {},
    newId() {
      named += 1;
      return `job${named}`;
    },
    newSeed() {
      seeded += 1;
      return seeded;
    },
    addressOf: (there) => `http://bench/#${there}`,
    async copy(text) {
      this.copied.push(text);
      return true;
    },
    place: () => place,
    go(next) {
      place = next;
      for (const hear of hearers) hear(place);
    },
    onPlace(hear) {
      hearers.add(hear);
      return () => hearers.delete(hear);
    },
    online: () => true,
  };
}
