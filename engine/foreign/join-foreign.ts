import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Staged } from '../diagnostics/staged.ts';
import { type ForeignFacts, noForeignFacts } from '../model/foreign-facts.ts';
import type { Span } from '../model/span.ts';

/** What one file gives to another. */
export interface Gift {
  readonly facts: ForeignFacts;
  /** The file it is from, as it is written. */
  readonly from: string;
  /** Where it is named. */
  readonly span: Span;
}

const tables = ['conditions', 'settings', 'readings', 'faults'] as const;

type Table = (typeof tables)[number];
type Named = { readonly id: string };

/** Everything that several files give. A name that two of them mean differently is told where the second is named. */
export function joinForeign(gifts: readonly Gift[]): Staged<ForeignFacts> {
  if (gifts.length === 0) return { value: noForeignFacts, diagnostics: [] };
  const diagnostics: Diagnostic[] = [];
  const joined = tables.map((table) => [table, join(table, gifts, diagnostics)]);
  return { value: Object.fromEntries(joined) as unknown as ForeignFacts, diagnostics };
}

function join(table: Table, gifts: readonly Gift[], diagnostics: Diagnostic[]): readonly Named[] {
  const known = new Map<string, { readonly one: Named; readonly from: string }>();
  for (const { facts, from, span } of gifts) {
    for (const one of facts[table] as readonly Named[]) {
      const before = known.get(one.id);
      if (before === undefined) known.set(one.id, { one, from });
      else if (before.one !== one && JSON.stringify(before.one) !== JSON.stringify(one)) {
        const { from: first } = before;
        diagnostics.push({ code: 'declared-elsewhere', name: one.id, first, second: from, span });
      }
    }
  }
  return [...known.values()].map(({ one }) => one);
}
