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
  /** Neither or more than one of the ways to say what values there are. */
  | {
      readonly code: 'one-measure';
      readonly of: 'reading' | 'setting' | 'parameter';
      readonly found: readonly string[];
    }
  | { readonly code: 'normal-missing'; readonly reading: string; readonly bands: readonly string[] }
  | { readonly code: 'good-not-normal'; readonly reading: string }
  | { readonly code: 'wait-form'; readonly text: string }
  | { readonly code: 'share-form'; readonly text: string }
  | { readonly code: 'shares-sum'; readonly sum: string }
  /** A percentage that makes no sense at its key. */
  | { readonly code: 'share-range'; readonly key: string; readonly text: string; readonly bound: string }
  | { readonly code: 'brings-itself'; readonly fault: string }
  /** Two words for what may be one family of faults. */
  | { readonly code: 'near-family'; readonly family: string; readonly near: readonly string[] }
  | { readonly code: 'circle'; readonly key: CircleKey; readonly names: readonly string[] }
  | { readonly code: 'hidden-missing'; readonly reading: string; readonly bands: readonly string[] }
  | { readonly code: 'missing-source'; readonly reading: string };

/** Keys by which readings lead to each other. */
export type CircleKey = 'needs' | 'after' | 'only if' | 'like' | 'from';

export type NameKind =
  | 'reading'
  | 'setting'
  | 'fault'
  | 'band'
  | 'option'
  | 'condition'
  | 'condition value'
  | 'member'
  | 'parameter'
  | 'end'
  | 'family';

/** What has a name that can clash. */
export type Declared = 'reading' | 'setting' | 'fault' | 'condition' | 'parameter';

/** Where readings are derived, many alike, taken in conditions, or known from other files. */
export type DeclarationFacts =
  /** `other` is what has the name already, in a file that is used or among the parameters. */
  | {
      readonly code: 'name-clash';
      readonly name: string;
      readonly of: Declared;
      readonly other: Declared;
      readonly elsewhere: boolean;
    }
  /** `when: out`, `when: cards = out`. */
  | { readonly code: 'when-form'; readonly text: string }
  | { readonly code: 'no-tool-named'; readonly name: string; readonly near: readonly string[] }
  | {
      readonly code: 'no-class-named';
      readonly name: string;
      readonly boards: readonly string[];
      readonly near: readonly string[];
    }
  /** A name in `from` that stands for no reading and no setting. */
  | { readonly code: 'no-input-named'; readonly name: string; readonly near: readonly string[] }
  | { readonly code: 'input-not-number'; readonly name: string; readonly of: 'reading' | 'setting' }
  /** A key that a derived reading cannot have; `compares` where it is one of a quantity and `from` gives yes or no. */
  | { readonly code: 'derived-key'; readonly key: string; readonly compares: boolean }
  | { readonly code: 'each-size'; readonly count: number; readonly least: number; readonly most: number }
  | { readonly code: 'member-is-band'; readonly name: string }
  | { readonly code: 'each-bands'; readonly wrong: readonly string[]; readonly most: number }
  | { readonly code: 'each-not-judged' }
  | { readonly code: 'shows-how-many'; readonly reading: string; readonly bands: readonly string[] }
  | { readonly code: 'usual-not-quantity'; readonly reading: string }
  /** A list names a parameter, whose normal bands only the caller knows. */
  | { readonly code: 'parameter-bands'; readonly parameter: string; readonly bands: readonly string[] };

/** Problems of the front-matter. */
export type FrontMatterFacts = YamlFacts | ShapeFacts | MeaningFacts | DeclarationFacts;
