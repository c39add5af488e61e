/** Something that comes from elsewhere and may not come. */
export type Loading<T> =
  | { readonly state: 'loading' }
  | { readonly state: 'ready'; readonly value: T }
  | { readonly state: 'failed'; readonly why: string };

export const loading: Loading<never> = { state: 'loading' };
