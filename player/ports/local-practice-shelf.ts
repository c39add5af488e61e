import type { PracticeShelf } from './practice-shelf.ts';

const prefix = 'deadboard.practice.';

function attempt<T>(work: () => T, otherwise: T): T {
  try {
    return work();
  } catch {
    return otherwise;
  }
}

/** `localStorage`, one item for each text, so that two windows never overwrite each other's. */
export const localPracticeShelf: PracticeShelf = {
  names: () =>
    attempt(
      () =>
        Object.keys(localStorage)
          .filter((name) => name.startsWith(prefix))
          .map((name) => name.slice(prefix.length)),
      [],
    ),
  read: (name) => attempt(() => localStorage.getItem(prefix + name), null),
  write: (name, text) =>
    attempt(() => {
      localStorage.setItem(prefix + name, text);
      return true;
    }, false),
  remove: (name) => attempt(() => localStorage.removeItem(prefix + name), undefined),
};
