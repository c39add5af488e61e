/** Where YAML takes a text apart, or takes it for something that was not meant. */
export type YamlFacts =
  /** `is: Clock: slot`, `is: "Swap" the chip`, `is: @x`: `instead` is the text in quotes. */
  | { readonly code: 'needs-quotes'; readonly text: string; readonly instead: string }
  /** `expect: >= 4 V`: a leading `>` begins a block of text. */
  | { readonly code: 'leading-greater'; readonly text: string; readonly instead: string }
  /** `{ expect: 3,3 V }`: the comma ends the value. */
  | { readonly code: 'comma-in-braces'; readonly text: string; readonly instead: string }
  | { readonly code: 'space-after-colon'; readonly text: string }
  /** `is: Reset #1`: the rest of the line is a comment. */
  | { readonly code: 'hash-cuts-text'; readonly kept: string; readonly lost: string }
  /** A space that is not a plain one after `:` or `-`, or before a key. */
  | { readonly code: 'special-space'; readonly name: string }
  | { readonly code: 'tab-indent' }
  | { readonly code: 'bad-indent' }
  | { readonly code: 'quote-not-closed'; readonly quote: string }
  | { readonly code: 'bracket-not-closed'; readonly bracket: string }
  | { readonly code: 'not-a-pair'; readonly text: string }
  | { readonly code: 'duplicate-key'; readonly key: string }
  | { readonly code: 'yaml-feature'; readonly feature: YamlFeature }
  /** What the parser says where nothing above fits. */
  | { readonly code: 'yaml-syntax'; readonly message: string }
  | { readonly code: 'facts-too-deep'; readonly depth: number; readonly limit: number }
  | { readonly code: 'too-many-entries'; readonly limit: number }
  | { readonly code: 'entry-too-large'; readonly characters: number; readonly limit: number };

/** The parts of YAML that facts do without. */
export type YamlFeature =
  | 'anchor'
  | 'alias'
  | 'tag'
  | 'merge key'
  | 'key that is no text'
  | 'directive'
  | 'document end';

/** Where the facts have the wrong shape. */
export type ShapeFacts =
  | {
      readonly code: 'unknown-key';
      readonly key: string;
      readonly near: readonly string[];
      readonly keys: readonly string[];
    }
  | { readonly code: 'missing-key'; readonly key: string; readonly of: string }
  | { readonly code: 'empty-value'; readonly key: string }
  | { readonly code: 'wrong-shape'; readonly key: string; readonly expected: string; readonly found: Shape }
  | { readonly code: 'number-wanted'; readonly key: string; readonly text: string }
  | { readonly code: 'number-range'; readonly key: string; readonly number: number; readonly bound: string }
  | {
      readonly code: 'word-wanted';
      readonly key: string;
      readonly text: string;
      readonly words: readonly string[];
      readonly near: readonly string[];
    };

export type Shape = 'text' | 'list' | 'table';

/** Where the facts contradict each other. */
export type MeaningFacts =
  | {
      readonly code: 'name-form';
      readonly name: string;
      readonly of: NameKind;
      readonly instead: string | null;
    }
  | { readonly code: 'reserved-word'; readonly name: string; readonly of: NameKind }
  | { readonly code: 'option-twice'; readonly option: string }
  | { readonly code: 'setting-and-reading'; readonly name: string }
  /** Neither or more than one of `unit` with `scale` or `expect`, `options`, `codes`. */
  | { readonly code: 'one-measure'; readonly of: 'reading' | 'setting'; readonly found: readonly string[] }
  | { readonly code: 'normal-missing'; readonly reading: string; readonly bands: readonly string[] }
  | { readonly code: 'good-not-normal'; readonly reading: string }
  | { readonly code: 'wait-form'; readonly text: string }
  | { readonly code: 'share-form'; readonly text: string }
  | { readonly code: 'shares-sum'; readonly sum: string }
  | { readonly code: 'circle'; readonly key: 'needs' | 'after'; readonly names: readonly string[] }
  | { readonly code: 'hidden-missing'; readonly reading: string; readonly bands: readonly string[] }
  | { readonly code: 'missing-source'; readonly reading: string };

export type NameKind = 'reading' | 'setting' | 'fault' | 'band' | 'option';

/** Problems of the front-matter. */
export type FrontMatterFacts = YamlFacts | ShapeFacts | MeaningFacts;
