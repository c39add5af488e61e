import type { Part } from '../parts.ts';
import type { OnlyIfSyntax } from '../section-syntax.ts';

/** What the `Only if` line of a section says; null where there is none. */
export function onlyIfOf(parts: readonly Part[]): OnlyIfSyntax | null {
  for (const part of parts) {
    if (part.kind === 'lead' && part.lead.word === 'Only if')
      return { clauses: part.lead.clauses, span: part.span };
  }
  return null;
}
