import type { ComponentChildren, JSX } from 'preact';

interface NoticeLineProps {
  readonly tone: 'told' | 'refused';
  readonly text: string;
  readonly children?: ComponentChildren;
  readonly onDismiss: () => void;
}

/** A message that stays until it is put away. */
export function NoticeLine({ tone, text, children, onDismiss }: NoticeLineProps): JSX.Element {
  return (
    <div class={`notice notice-${tone}`} role="alert">
      <p>
        {tone === 'refused' && <strong class="refused-mark">Not entered. </strong>}
        {text}.
      </p>
      <div class="notice-actions">
        {children}
        <button type="button" class="action action-quiet" onClick={onDismiss}>
          Put away
        </button>
      </div>
    </div>
  );
}
