import type { JSX } from 'preact';

interface ShareBarProps {
  /** 0..1 */
  readonly share: number;
  /** What is not one of the tree's faults is dotted, not hatched. */
  readonly filling: 'hatched' | 'dotted';
}

/** How likely, as a length against a rule of ten parts. The words stand beside it. */
export function ShareBar({ share, filling }: ShareBarProps): JSX.Element {
  return (
    <span class="share-bar" aria-hidden="true">
      <span class={`share-fill share-${filling}`} style={{ width: `${(share * 100).toFixed(1)}%` }} />
    </span>
  );
}
