/** The kinds of files that others name. */
export type NamedKind = 'shared' | 'procedure' | 'tree';

/** Problems between files: one that is named and cannot be used, or does not fit where it is followed. */
export type FileFacts =
  /** `alone`: nothing is known of any file beside this one. */
  | {
      readonly code: 'no-file';
      readonly path: string;
      readonly wanted: NamedKind;
      readonly near: readonly string[];
      readonly alone: boolean;
    }
  | {
      readonly code: 'other-file-kind';
      readonly path: string;
      readonly wanted: NamedKind;
      readonly kind: string;
    }
  /** Files that use, or procedures that follow, each other; the first stands last again. */
  | { readonly code: 'files-in-circle'; readonly by: 'uses' | 'Follow'; readonly names: readonly string[] }
  | {
      readonly code: 'no-section-there';
      readonly slug: string;
      readonly path: string;
      readonly near: readonly string[];
    }
  | { readonly code: 'file-broken'; readonly path: string; readonly errors: number }
  /** Two files declare one name in two ways. */
  | {
      readonly code: 'declared-elsewhere';
      readonly name: string;
      readonly first: string;
      readonly second: string;
    };

/** Problems between a procedure and the section that follows it. */
export type CallFacts =
  | {
      readonly code: 'argument-missing';
      readonly procedure: string;
      readonly parameter: string;
      readonly is: string;
    }
  | {
      readonly code: 'no-parameter-named';
      readonly name: string;
      readonly near: readonly string[];
      readonly takes: readonly string[];
    }
  | {
      readonly code: 'argument-bands';
      readonly parameter: string;
      readonly reading: string;
      readonly lacks: readonly string[];
    }
  | { readonly code: 'end-not-taken'; readonly procedure: string; readonly ends: readonly string[] }
  | { readonly code: 'ends-only'; readonly name: string; readonly ends: readonly string[] }
  /** Sound by itself, but not with what it is given here. */
  | {
      readonly code: 'call-does-not-fit';
      readonly procedure: string;
      readonly where: string;
      readonly says: string;
    }
  | {
      readonly code: 'too-many-states';
      readonly count: number;
      readonly limit: number;
      readonly chain: readonly string[];
    };

/** Problems of a procedure's own. */
export type ProcedureFacts =
  | {
      readonly code: 'no-end-named';
      readonly name: string;
      readonly near: readonly string[];
      readonly ends: readonly string[];
    }
  | { readonly code: 'end-without-section'; readonly end: string }
  | { readonly code: 'unused-parameter'; readonly parameter: string };

export type BesideFacts = FileFacts | CallFacts | ProcedureFacts;
