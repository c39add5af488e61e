/** Why the bench's store did not do what was asked. */
export type StoreProblem =
  /** No room left for this site's data. */
  | { readonly kind: 'full' }
  /** The job already holds more entries than the writer knew: another window went on with it. */
  | { readonly kind: 'moved-on'; readonly entries: number }
  /** The job is not (or no longer) there. */
  | { readonly kind: 'gone' }
  /** The browser gives no store (private window, blocked, closed), with its own words. */
  | { readonly kind: 'unavailable'; readonly detail: string };

export type Stored<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: StoreProblem };
