import type { JSX } from 'preact';

/** The name with its needle; leads back to the bench. */
export function Wordmark(): JSX.Element {
  return (
    <a class="wordmark" href="#/" aria-label="Deadboard: back to the bench">
      <svg viewBox="0 0 32 22" aria-hidden="true">
        <path d="M3 19a13 13 0 0 1 26 0" fill="none" stroke="currentColor" stroke-width="2.2" />
        <path d="M16 20 23 6.5" stroke="var(--accent)" stroke-width="2.8" stroke-linecap="round" />
        <circle cx="16" cy="20" r="2.3" fill="currentColor" />
      </svg>
      <span>Deadboard</span>
    </a>
  );
}
