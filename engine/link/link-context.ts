import type { Diagnostic, DiagnosticFacts, Fix } from '../diagnostics/diagnostic.ts';
import type { Fault } from '../model/fault.ts';
import type { Formula } from '../model/formula.ts';
import type { Reading } from '../model/reading.ts';
import type { HandOverSection } from '../model/section.ts';
import type { Setting } from '../model/setting.ts';
import type { Span } from '../model/span.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import { nearest } from '../names/nearest.ts';
import type { Beside } from './beside.ts';
import type { Aspect } from './linked-tree.ts';
import type { Instance } from './procedures/instance.ts';

/** What is known while the names of a file are looked up, and what is gathered on the way. */
export interface LinkContext {
  readonly facts: TreeFacts;
  readonly settings: ReadonlyMap<string, Setting>;
  readonly readings: ReadonlyMap<string, Reading>;
  readonly faults: ReadonlyMap<string, Fault>;
  /** The ids of the file's sections in the tree, by slug. */
  readonly sections: ReadonlyMap<string, string>;
  readonly beside: Beside;
  /** The procedures that the file's sections follow, by slug. */
  readonly calls: ReadonlyMap<string, Instance>;
  /** The call whose procedure is being put in; null while a file is linked for itself. */
  readonly within: Within | null;
  readonly diagnostics: Diagnostic[];
  readonly open: Set<Aspect>;
  readonly settingsUsed: Set<string>;
  /** Other trees that are led to, by section id, and where that was first said. */
  readonly handOvers: Map<string, HandOver>;
  /** Names that could have been meant, nearest first. */
  near(name: string, names: Iterable<string>): readonly string[];
}

/** A section in which the job goes on elsewhere, and the link that first led there. */
export interface HandOver {
  readonly section: HandOverSection;
  readonly span: Span;
}

/** What is particular to one call of a procedure. */
export interface Within {
  readonly instance: Instance;
  /** What its sections' ids begin with: `find-the-short.` */
  readonly prefix: string;
  /** Where the procedure's file is. */
  readonly path: string;
  readonly names: ReadonlyMap<string, string>;
  readonly quantities: ReadonlyMap<string, Formula>;
  /** An address of the procedure's from where the tree is. */
  address(url: string): string;
}

/** Near misses are worth their time for a person's typing slips, not for a file full of wrong names. */
const mostNearMisses = 100;

const byId = <T extends { readonly id: string }>(items: readonly T[]): ReadonlyMap<string, T> =>
  new Map(items.map((item) => [item.id, item]));

export function linkContext(
  facts: TreeFacts,
  sections: ReadonlyMap<string, string>,
  beside: Beside,
): LinkContext {
  let left = mostNearMisses;
  return {
    facts,
    settings: byId(facts.settings),
    readings: byId(facts.readings),
    faults: byId(facts.faults),
    sections,
    beside,
    calls: beside.calls,
    within: null,
    diagnostics: [],
    open: new Set(),
    settingsUsed: new Set(),
    handOvers: new Map(),
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
  facts: DiagnosticFacts,
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
