import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect } from 'vitest';
import { compileTree } from '../../engine/compile.ts';
import type { Diagnostic } from '../../engine/diagnostics/diagnostic.ts';
import { diagnosticJson, formatDiagnostic } from '../../engine/diagnostics/index.ts';
import { fixtureNames, readInput } from '../engine/diagnostics/fixtures.ts';
import { damage, damaged, scraps } from './damage.ts';

/** Whole files, sound and broken, none so large that a run spends its time on it. */
const files = [readFileSync('tests/helpers/bench-tree.md', 'utf8'), ...fixtureNames().map(readInput)].filter(
  ({ length }) => length < 10_000,
);

const mangled = fc
  .tuple(
    fc.constantFrom(...files),
    fc.array(damage, { minLength: 1, maxLength: 8 }),
    fc.constantFrom('\n', '\n', '\r\n', '\r'),
  )
  .map(([file, damages, ending]) => {
    const text = damaged(file, damages);
    return ending === '\n' ? text : text.replaceAll('\n', ending);
  });

const texts = fc.oneof(
  { weight: 8, arbitrary: mangled },
  { weight: 1, arbitrary: fc.array(scraps, { maxLength: 60 }).map((parts) => parts.join('')) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 400 }) },
);

/** Whatever the text: compiling never throws, says the same again, stays inside the file, and has a tree only without errors. */
export function mangledTexts(numRuns: number, seed?: number): void {
  fc.assert(
    fc.property(texts, (text) => {
      const { tree, diagnostics } = compileTree(text, { id: 'mangled' });
      for (const diagnostic of diagnostics) holds(text, diagnostic);
      const errors = diagnostics.filter((each) => diagnosticJson('f', text, each).severity === 'error');
      expect(tree === null).toBe(errors.length > 0);
      const again = compileTree(text, { id: 'mangled' });
      expect({ tree: again.tree, diagnostics: again.diagnostics }).toEqual({ tree, diagnostics });
    }),
    { numRuns, ...(seed === undefined ? {} : { seed }) },
  );
}

export function holds(text: string, diagnostic: Diagnostic): void {
  const { span, related, fix } = diagnostic;
  for (const { from, to } of [span, ...(related ? [related] : []), ...(fix?.edits ?? [])]) {
    if (!(from >= 0 && from <= to && to <= text.length))
      expect.fail(`outside the file: ${JSON.stringify(diagnostic)}`);
  }
  expect(formatDiagnostic('f', text, diagnostic)).toMatch(
    /^f:\d+:\d+: (?:error|warning|hint) [a-z]+(?:-[a-z]+)*: \S/,
  );
}
