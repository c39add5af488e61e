/** What can be wrong with a board sheet besides its shape. */
export type BoardFacts =
  | LimitsFacts
  | JumperFacts
  | PictureFacts
  | ReferenceFacts
  /** Nearly the name of something that the shared files declare. */
  | {
      readonly code: 'near-shared-name';
      readonly of: 'reading' | 'setting';
      readonly name: string;
      readonly near: readonly string[];
    }
  /** One list names a thing twice: positions of a jumper, sockets. */
  | { readonly code: 'listed-twice'; readonly name: string; readonly key: string }
  | { readonly code: 'no-socket-named'; readonly name: string; readonly near: readonly string[] }
  | { readonly code: 'sheet-lead-line'; readonly word: string };

/** The other limits that a board gives a reading. */
type LimitsFacts =
  | { readonly code: 'sheet-limits'; readonly reading: string; readonly found: readonly string[] }
  | {
      readonly code: 'sheet-bands-differ';
      readonly reading: string;
      readonly bands: readonly string[];
      readonly expected: readonly string[];
    }
  /** `wanted` is what the reading is declared with. */
  | { readonly code: 'sheet-measure-differs'; readonly reading: string; readonly wanted: string }
  | { readonly code: 'sheet-unit'; readonly reading: string };

type JumperFacts =
  | { readonly code: 'jumper-name'; readonly name: string; readonly of: 'jumper' | 'position' | 'socket' }
  | { readonly code: 'positions-form'; readonly found: string }
  | { readonly code: 'no-jumper-named'; readonly name: string; readonly near: readonly string[] }
  | {
      readonly code: 'no-position-named';
      readonly jumper: string;
      readonly position: string;
      readonly positions: readonly string[];
      readonly near: readonly string[];
    }
  | { readonly code: 'jumper-twice'; readonly jumper: string }
  | {
      readonly code: 'positions-overlap';
      readonly setting: string;
      /** Positions for which both rows hold. */
      readonly positions: string;
      readonly value: string;
      readonly other: string;
    }
  | {
      readonly code: 'positions-uncovered';
      readonly setting: string;
      readonly example: string;
      /** How many more there are. */
      readonly more: number;
    }
  | { readonly code: 'jumper-table-large'; readonly rows: number; readonly limit: number };

type PictureFacts =
  | { readonly code: 'picture-missing'; readonly file: string }
  | { readonly code: 'picture-kind'; readonly file: string }
  | { readonly code: 'unused-picture'; readonly picture: string }
  | {
      readonly code: 'no-picture-named';
      readonly name: string;
      readonly near: readonly string[];
      readonly pictures: readonly string[];
    }
  /** A point has a picture without its place there, or a place without a picture. */
  | { readonly code: 'point-place'; readonly lacks: readonly string[] }
  | { readonly code: 'point-per-cent'; readonly key: string; readonly text: string };

type ReferenceFacts =
  | { readonly code: 'reference-day'; readonly text: string }
  | { readonly code: 'reference-quantity'; readonly reading: string };
