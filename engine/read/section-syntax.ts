import type { Block, Hazard, Inline } from '../model/prose.ts';
import type { Span } from '../model/span.ts';
import type { ClauseSyntax, ConditionSyntax } from './condition-syntax.ts';
import type { Named } from './named.ts';
import type { Risk } from './risks/find-risks.ts';

/** A link as it is written.
 *
 *      #power-good          file null         section `power-good`
 *      ../trees/memory.md   file as written   section null
 *      memory.md#banks      file `memory.md`  section `banks`, a slug of that file
 *      https://…            file null         section null
 */
export interface LinkSyntax {
  readonly url: string;
  /** The relative path of another Markdown file, percent-decoded; null for this file and for everything else. */
  readonly file: string | null;
  /** The slug it names in that file or in this one, percent-decoded; null where it names none. */
  readonly section: string | null;
  /** The address alone, without its brackets. */
  readonly span: Span;
}

/** One line of a check. */
export interface OutcomeSyntax {
  /** Null where the condition was refused. */
  readonly condition: ConditionSyntax | null;
  readonly written: string;
  /** The condition's place: names inside it count from `from`. */
  readonly span: Span;
  /** Null where there is no link to a section of this file or to another tree. */
  readonly link: LinkSyntax | null;
  readonly remark: readonly Inline[];
}

export interface ProseSyntax {
  readonly hazards: readonly Hazard[];
  readonly blocks: readonly Block[];
}

export interface RemedySyntax extends ProseSyntax {
  /** Null for the whole remedy of a section with a single fault. */
  readonly fault: string | null;
}

/** What linking must look at inside the prose. */
export interface Mentions {
  /** Code spans: some are values. */
  readonly codes: readonly Named[];
  /** `{ … }` in running text: perhaps meant as a value. */
  readonly braces: readonly Named[];
  readonly links: readonly LinkSyntax[];
}

interface SectionBase extends ProseSyntax {
  readonly id: string;
  readonly title: string;
  readonly titleSpan: Span;
  /** The lead line that makes the section what it is; the title's place if there is none. */
  readonly leadSpan: Span;
  readonly mentions: Mentions;
  /** What it tells to do that must be warned of. */
  readonly risks: readonly Risk[];
  /** A problem of its text may have swallowed a lead line or an outcome. */
  readonly doubtful: boolean;
}

export interface CheckSyntax extends SectionBase {
  readonly kind: 'check';
  readonly readings: readonly Named[];
  readonly outcomes: readonly OutcomeSyntax[];
}

export interface TaskSyntax extends SectionBase {
  readonly kind: 'task';
  readonly task: readonly Inline[];
  /** Null where the author gave no time. */
  readonly minutes: number | null;
  readonly wait: number;
  /** `cards out`: the conditions the board is brought into. */
  readonly sets: readonly ConditionPair[];
  /** `Only if …`; null where there is no such line. */
  readonly onlyIf: OnlyIfSyntax | null;
  readonly target: LinkSyntax | null;
}

/** One condition of the board and what it is brought to: `cards out`. */
export interface ConditionPair {
  readonly condition: Named;
  readonly value: Named;
}

/** What must have been seen before the work of a section; names count from the section's first character. */
export interface OnlyIfSyntax {
  readonly clauses: readonly ClauseSyntax[];
  readonly span: Span;
}

/** ``Follow [Short on a rail](../procedures/short-on-a-rail.md) with `rail` = `v5`.`` */
export interface CallSyntax extends SectionBase {
  readonly kind: 'call';
  /** `file` is a relative path, percent-decoded; the span is the address's. */
  readonly procedure: { readonly file: string; readonly title: string; readonly span: Span };
  readonly given: readonly { readonly name: Named; readonly value: Named }[];
  /** Conditions speak of the procedure's ends as bare bands. */
  readonly outcomes: readonly OutcomeSyntax[];
}

/** ``End `found`.``: a way out of a procedure. */
export interface EndSyntax extends SectionBase {
  readonly kind: 'end';
  readonly end: Named;
}

/** A reading of the proof, and the tries it asks of one that counts them: ``20 of 20 `starts` ``. */
export interface ProofName extends Named {
  readonly tries: number | null;
}

export interface FaultSyntax extends SectionBase {
  readonly kind: 'fault';
  readonly faults: readonly Named[];
  readonly remedies: readonly RemedySyntax[];
  readonly proof: readonly ProofName[];
  /** What must have been seen before the remedies. */
  readonly onlyIf: OnlyIfSyntax | null;
}

export interface StopSyntax extends SectionBase {
  readonly kind: 'stop';
  readonly reason: readonly Inline[];
}

/** A section whose kind cannot be told. */
export interface UnknownSyntax extends SectionBase {
  readonly kind: 'unknown';
}

/** What the text of one section says, no name looked up. Every offset counts from the section's
 *  first character, so that a section that only moved need not be read again. */
export type SectionSyntax =
  | CheckSyntax
  | TaskSyntax
  | CallSyntax
  | EndSyntax
  | FaultSyntax
  | StopSyntax
  | UnknownSyntax;

/** What a lead line can make. */
export type MadeKind = Exclude<SectionSyntax['kind'], 'unknown'>;

/** What stands above the first section. */
export interface HeadSyntax extends ProseSyntax {
  /** The first-level heading, if there is one. */
  readonly title: { readonly text: string; readonly span: Span } | null;
  readonly mentions: Mentions;
}
