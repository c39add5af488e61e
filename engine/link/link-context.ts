import type { BodyFacts } from '../diagnostics/body-facts.ts';
import type { Diagnostic, DiagnosticFacts, Fix } from '../diagnostics/diagnostic.ts';
import type { Fault } from '../model/fault.ts';
import type { Reading } from '../model/reading.ts';
import type { Setting } from '../model/setting.ts';
import type { Span } from '../model/span.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { nearest } from '../names/nearest.ts';
import type { Aspect } from './linked-tree.ts';

/** What is known while the names of a file are looked up, and what is gathered on the way. */
export interface LinkContext {
  readonly facts: TreeFacts;
  readonly settings: ReadonlyMap<string, Setting>;
  readonly readings: ReadonlyMap<string, Reading>;
  readonly faults: ReadonlyMap<string, Fault>;
  /** Ids of all sections. */
  readonly sections: ReadonlySet<string>;
  readonly diagnostics: Diagnostic[];
  readonly open: Set<Aspect>;
  readonly settingsUsed: Set<string>;
  /** Names that could have been meant, nearest first. */
  near(name: string, names: Iterable<string>): readonly string[];
}

/** Near misses are worth their time for a person's typing slips, not for a file full of wrong names. */
const mostNearMisses = 100;

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

export function linkContext(facts: TreeFacts, sections: ReadonlySet<string>): LinkContext {
  let left = mostNearMisses;
  return {
    facts,
    settings: byId(facts.settings),
    readings: byId(facts.readings),
    faults: byId(facts.faults),
    sections,
    diagnostics: [],
    open: new Set(),
    settingsUsed: new Set(),
    near(name, names) {
      left -= 1;
      if (left < 0 || name.length > 100) return [];
      const found = nearest(name, names);
      const same = found.filter((each) => each.toLowerCase() === name.toLowerCase());
      return same.length === 1 ? same : found;
    },
  };
}

export function report(
  context: Pick<LinkContext, 'diagnostics'>,
  facts: BodyFacts,
  span: Span,
  more: { fix?: Fix | undefined; related?: Span } = {},
) {
  const { fix, related } = more;
  const diagnostic: DiagnosticFacts & { span: Span } = { ...facts, span };
  context.diagnostics.push({ ...diagnostic, ...(fix && { fix }), ...(related && { related }) });
}

/** The fix for a name with exactly one near miss. */
export function only(
  near: readonly string[],
  span: Span,
  write: (name: string) => string = (name) => name,
): Fix | undefined {
  const [name, ...others] = near;
  if (name === undefined || others.length > 0) return undefined;
  return { title: `Write "${write(name)}"`, edits: [{ from: span.from, to: span.to, insert: write(name) }] };
}
