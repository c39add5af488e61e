import type { JSX } from 'preact';

/** The key that does the same as a button, drawn on it. */
export function KeyHint({ keys }: { readonly keys: string }): JSX.Element {
  return (
    <span class="key" aria-hidden="true">
      {keys}
    </span>
  );
}
