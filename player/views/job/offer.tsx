import type { JSX } from 'preact';

interface OfferProps {
  /** A sentence without its full stop. */
  readonly text: string;
  readonly act: string;
  readonly onAct: () => void;
  readonly decline: string;
  readonly onDecline: () => void;
}

/** Something that can be taken or left: it stays until one of both is said. */
export function Offer({ text, act, onAct, decline, onDecline }: OfferProps): JSX.Element {
  return (
    <div class="notice" role="status">
      <p>{text}.</p>
      <div class="notice-actions">
        <button type="button" class="action" onClick={onAct}>
          {act}
        </button>
        <button type="button" class="action action-quiet" onClick={onDecline}>
          {decline}
        </button>
      </div>
    </div>
  );
}
