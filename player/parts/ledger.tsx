import type { ComponentChildren, JSX } from 'preact';

interface LedgerProps {
  readonly title: string;
  /** Shown beside the title, also while it is folded. */
  readonly count?: number | string;
  readonly open: boolean;
  readonly children: ComponentChildren;
}

/** One page of what stands beside the work: folded on a phone, open on a bench screen. */
export function Ledger({ title, count, open, children }: LedgerProps): JSX.Element {
  return (
    <details class="ledger" open={open}>
      <summary>
        <span class="ledger-title">{title}</span>
        {count !== undefined && <span class="ledger-count">{count}</span>}
      </summary>
      {children}
    </details>
  );
}
