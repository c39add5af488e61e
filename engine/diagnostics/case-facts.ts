/** Problems of a case. */
export type CaseFacts =
  | { readonly code: 'case-without-answers' }
  | { readonly code: 'second-answer-list' }
  | { readonly code: 'empty-answer' }
  | { readonly code: 'case-without-end' }
  | { readonly code: 'case-end-form'; readonly text: string }
  | { readonly code: 'case-end-elsewhere'; readonly url: string; readonly trees: readonly string[] }
  | { readonly code: 'case-file-missing'; readonly of: 'tree' | 'board'; readonly path: string }
  | { readonly code: 'case-file-broken'; readonly of: 'tree' | 'board'; readonly path: string }
  | {
      readonly code: 'no-setting-named';
      readonly name: string;
      readonly near: readonly string[];
    };
