import type { Browser } from './browser.ts';

/** A browser that prints nowhere and counts its names. */
export function fakeBrowser(start = '/'): Browser & { printed: number } {
  let place = start;
  let named = 0;
  const hearers = new Set<(place: string) => void>();
  return {
    printed: 0,
    print() {
      this.printed += 1;
    },
    askToKeepData() {},
    newId() {
      named += 1;
      return `job${named}`;
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
