const plain = (text: string): string => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase();

/** Those of `items` whose words contain every word of `typed`, in any order and part of a word being enough. */
export function narrow<T>(items: readonly T[], typed: string, wordsOf: (item: T) => string): readonly T[] {
  const wanted = plain(typed)
    .split(/\s+/)
    .filter((word) => word !== '');
  return items.filter((item) => {
    const words = plain(wordsOf(item));
    return wanted.every((word) => words.includes(word));
  });
}
