import type { Block, Hazard } from '../model/prose.ts';
import type { Section } from '../model/section.ts';
import type { Span } from '../model/span.ts';
import type { TreeFacts } from '../model/tree-facts.ts';
import type { Risk } from '../read/risks/find-risks.ts';

/** What could not be understood everywhere: a rule about it would only complain of the consequences. */
export type Aspect = 'ways' | 'faults' | 'readings';

/** A section with its names resolved, and the places its problems are reported at. */
export interface LinkedSection {
  readonly section: Section;
  readonly titleSpan: Span;
  readonly leadSpan: Span;
  /** One for each outcome of a check. */
  readonly outcomeSpans: readonly Span[];
  /** One for each remedy of a fault section. */
  readonly faultSpans: readonly Span[];
  /** What it tells to do that must be warned of. */
  readonly risks: readonly Risk[];
  /** Everything in it could be resolved. */
  readonly sound: boolean;
  /** The end of a procedure that it is, in a procedure linked for itself; such a section is a stop without words. */
  readonly end?: string;
  /** It came out of a procedure's file: its places are the Follow line's, and what is wrong with it was told there. */
  readonly inlined?: true;
}

/** Where a setting, a reading or a fault is declared. */
export type PlaceOf = (kind: 'settings' | 'readings' | 'faults', id: string) => Span;

/** A tree in which every name leads to the thing it names. Sections whose kind is unknown are left out. */
export interface LinkedTree {
  readonly facts: TreeFacts;
  readonly placeOf: PlaceOf;
  readonly hazards: readonly Hazard[];
  readonly blocks: readonly Block[];
  readonly sections: readonly LinkedSection[];
  readonly open: ReadonlySet<Aspect>;
  /** Settings that a condition or the prose makes use of. */
  readonly settingsUsed: ReadonlySet<string>;
  /** Names of settings, readings, faults and conditions that other files declare, and those of calls: nobody's mistake
   *  where they are not used. */
  readonly foreign: ReadonlySet<string>;
}
