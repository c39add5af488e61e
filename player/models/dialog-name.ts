/** What can be opened over a job. */
export type DialogName =
  | { readonly dialog: 'more' }
  | { readonly dialog: 'suspects' }
  | { readonly dialog: 'note' }
  | { readonly dialog: 'todo' }
  | { readonly dialog: 'cannot-read' }
  | { readonly dialog: 'go' }
  | { readonly dialog: 'close' }
  | { readonly dialog: 'reopen' }
  | { readonly dialog: 'decline' }
  | { readonly dialog: 'override' }
  | { readonly dialog: 'runs' }
  | { readonly dialog: 'undone' }
  | { readonly dialog: 'settings' }
  | { readonly dialog: 'board' }
  | { readonly dialog: 'instruments' }
  | { readonly dialog: 'twin'; readonly reading: string }
  | { readonly dialog: 'change-setting'; readonly setting: string }
  /** `of` counts entries from 0. */
  | { readonly dialog: 'retake'; readonly reading: string; readonly of: number }
  | { readonly dialog: 'strike'; readonly reading: string; readonly of: number };
