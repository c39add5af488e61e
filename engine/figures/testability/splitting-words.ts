import type { Splitting } from './splitting.ts';

/** What would tell faults apart, as half a sentence. */
export function splittingWords(splitting: Splitting, faults: readonly string[]): string {
  switch (splitting.by) {
    case 'declared':
      return `take \`${splitting.reading}\`, which is declared and not used`;
    case 'members':
      return `say which members of \`${splitting.reading}\` each of them puts out of normal`;
    case 'condition':
      return `read \`${splitting.reading}\` once more with ${splitting.condition} ${splitting.value}, if they differ there`;
    case 'new':
      return `a reading that differs between ${faults.join(' and ')}`;
  }
}
