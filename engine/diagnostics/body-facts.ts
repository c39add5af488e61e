/** What can be wrong inside a condition, before any name is looked up. */
export type ConditionFacts =
  | { readonly code: 'condition-syntax'; readonly expected: string; readonly found: string }
  | { readonly code: 'condition-word'; readonly word: string; readonly instead: string }
  | { readonly code: 'comma-before-clause'; readonly name: string }
  | { readonly code: 'or-before-clause'; readonly name: string };

/** What can be wrong with the lead lines of a section. */
export type LeadLineFacts =
  | { readonly code: 'lead-inside-paragraph'; readonly word: string }
  | { readonly code: 'near-lead-line'; readonly word: string; readonly form: string }
  | { readonly code: 'lead-line-clash'; readonly first: string; readonly second: string }
  | { readonly code: 'lead-line-twice'; readonly word: string }
  | { readonly code: 'lead-line-alone'; readonly word: string; readonly needs: readonly string[] }
  | { readonly code: 'lead-above-sections'; readonly word: string }
  | { readonly code: 'section-without-lead-line'; readonly title: string }
  | { readonly code: 'task-without-then' }
  | { readonly code: 'task-time'; readonly text: string }
  | { readonly code: 'proof-tries'; readonly good: number; readonly tries: number }
  | { readonly code: 'only-if-form' }
  | { readonly code: 'follow-elsewhere'; readonly url: string }
  | { readonly code: 'several-ends'; readonly ends: readonly string[] }
  | { readonly code: 'beside-end' }
  | { readonly code: 'nothing-after'; readonly word: string }
  | { readonly code: 'name-twice'; readonly word: string; readonly name: string }
  | { readonly code: 'fault-without-remedy'; readonly fault: string; readonly several: boolean };

/** What can be wrong with the outcomes of a check. */
export type OutcomeFacts =
  | { readonly code: 'outcomes-without-read' }
  | { readonly code: 'check-without-outcomes' }
  | { readonly code: 'call-without-outcomes' }
  | { readonly code: 'call-not-read' }
  | { readonly code: 'outcome-without-link'; readonly text: string }
  | { readonly code: 'outcome-without-arrow' }
  | { readonly code: 'outcome-without-condition' }
  | { readonly code: 'outcome-elsewhere'; readonly url: string }
  | { readonly code: 'outcome-extra' }
  | { readonly code: 'outcome-in-paragraph' }
  | { readonly code: 'arrow-form'; readonly found: string }
  | { readonly code: 'swallowed-line'; readonly line: string }
  | { readonly code: 'nested-outcome' }
  | { readonly code: 'indented-outcome' }
  | { readonly code: 'list-marker'; readonly marker: string }
  | { readonly code: 'ordered-outcomes'; readonly marker: string }
  | { readonly code: 'second-outcome-list' };

/** What can be wrong with headings, hazards and prose. */
export type ProseFacts =
  | { readonly code: 'setext-heading'; readonly text: string }
  | { readonly code: 'section-form' }
  | { readonly code: 'top-heading' }
  | { readonly code: 'empty-heading' }
  | { readonly code: 'lazy-quote'; readonly line: string }
  | { readonly code: 'hazard-form'; readonly word: string }
  | { readonly code: 'hazard-place'; readonly word: string }
  | {
      readonly code: 'hazard-missing';
      readonly words: string;
      readonly is: string;
      readonly signal: string;
    }
  | { readonly code: 'html'; readonly text: string }
  | { readonly code: 'link-definition'; readonly label: string; readonly url: string }
  | { readonly code: 'link-address'; readonly url: string }
  | { readonly code: 'image-address'; readonly url: string }
  | { readonly code: 'brace-value'; readonly text: string };

/** What can be wrong with names in the body, once the facts are known. */
export type LinkFacts =
  | { readonly code: 'title-differs'; readonly title: string; readonly heading: string }
  | { readonly code: 'equal-slugs'; readonly slug: string; readonly title: string }
  | { readonly code: 'no-section-named'; readonly slug: string; readonly near: readonly string[] }
  | { readonly code: 'no-reading-named'; readonly name: string; readonly near: readonly string[] }
  | { readonly code: 'no-fault-named'; readonly name: string; readonly near: readonly string[] }
  | { readonly code: 'nothing-named'; readonly name: string; readonly near: readonly string[] }
  | {
      readonly code: 'no-band-named';
      readonly name: string;
      readonly band: string;
      readonly bands: readonly string[];
      readonly near: readonly string[];
    }
  | { readonly code: 'bare-band'; readonly band: string; readonly readings: readonly string[] }
  | { readonly code: 'not-read-here'; readonly name: string; readonly readings: readonly string[] }
  | { readonly code: 'setting-without-options'; readonly name: string }
  | { readonly code: 'nothing-to-judge' }
  | { readonly code: 'clauses-exclude'; readonly name: string }
  | { readonly code: 'cannot-read-twice' }
  | {
      readonly code: 'not-many';
      readonly name: string;
      readonly band: string;
      /** It is given to a procedure. */
      readonly given?: boolean;
    }
  | {
      readonly code: 'one-that-is-normal';
      readonly name: string;
      readonly band: string;
      readonly wrong: readonly string[];
    }
  | {
      readonly code: 'how-many';
      readonly name: string;
      readonly band: string;
      readonly told: readonly string[];
    }
  | { readonly code: 'members-untold'; readonly name: string; readonly told: readonly string[] }
  | { readonly code: 'no-condition-named'; readonly name: string; readonly near: readonly string[] }
  | {
      readonly code: 'no-value-named';
      readonly name: string;
      readonly value: string;
      readonly values: readonly string[];
      readonly near: readonly string[];
    }
  | { readonly code: 'setting-not-seen'; readonly name: string }
  | { readonly code: 'tries-not-counted'; readonly name: string }
  | { readonly code: 'too-few-tries'; readonly name: string; readonly tries: number; readonly enough: number }
  | {
      readonly code: 'wrong-file-kind';
      readonly word: string;
      readonly kind: FileKind;
    };

/** What files of this language are, as far as their sections differ. */
export type FileKind = 'tree' | 'procedure' | 'shared';

/** Problems of the body: of one section's text, or of the names in it. */
export type BodyFacts = ConditionFacts | LeadLineFacts | OutcomeFacts | ProseFacts | LinkFacts;
