import { compileBoard } from '../../../engine/board/compile-board.ts';
import type { Diagnostic } from '../../../engine/diagnostics/diagnostic.ts';
import type { Library } from '../../../engine/library/library.ts';
import type { CompiledBoard } from '../../../engine/model/compiled-board.ts';
import type { ForeignFacts } from '../../../engine/model/foreign-facts.ts';

/** Every picture is there. */
const withPictures: Library = { text: () => null, picture: (path) => `data:,${path}` };

/** A board sheet with these lines of facts below the head that each has. */
export const sheetText = (facts: string): string =>
  `---\nformat: 1\nkind: board\ntitle: Plover P2\nboards: [486]\n${facts.replace(/^\n|\n\s*$/g, '')}\n---\n\n# Plover P2\n`;

export const compiled = (facts: string, foreign?: ForeignFacts) =>
  compileBoard(sheetText(facts), {
    id: 'plover-p2',
    path: 'boards/plover-p2.md',
    library: withPictures,
    ...(foreign && { foreign }),
  });

/** The compiled sheet; whatever is an error in it fails the test. */
export function boardOf(facts: string, foreign?: ForeignFacts): CompiledBoard {
  const { board, diagnostics } = compiled(facts, foreign);
  if (board === null) throw new Error(`the sheet has errors: ${codes(diagnostics).join(', ')}`);
  return board;
}

export const codes = (diagnostics: readonly Diagnostic[]): readonly string[] =>
  diagnostics.map(({ code }) => code);
