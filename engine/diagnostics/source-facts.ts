/** What a section can have too many of. */
export type Crowd = 'lines' | 'list and quote marks' | 'emphasis marks' | 'brackets';

/** Problems of the file as text, before anything is parsed. */
export type SourceFacts =
  | { readonly code: 'file-too-large'; readonly characters: number; readonly limit: number }
  | { readonly code: 'section-too-large'; readonly characters: number; readonly limit: number }
  | {
      readonly code: 'section-too-busy';
      readonly what: Crowd;
      readonly count: number;
      readonly limit: number;
    }
  | { readonly code: 'too-many-sections'; readonly count: number; readonly limit: number }
  /** A fence or HTML block that takes in the headings below it. */
  | { readonly code: 'block-not-closed'; readonly mark: string }
  | { readonly code: 'nesting-too-deep'; readonly depth: number; readonly limit: number }
  | { readonly code: 'backticks-too-many'; readonly count: number; readonly limit: number }
  /** The first line is not `---`: nothing is above the facts but blank, or the facts begin at once, or there are none. */
  | {
      readonly code: 'front-matter-start';
      readonly found: 'blank lines' | 'facts' | 'another mark' | 'nothing';
    }
  | { readonly code: 'front-matter-end'; readonly found: 'another mark' | 'nothing' };
