import type { JSX } from 'preact';
import { asShown } from './as-shown.ts';
import { Figure } from './figure.tsx';

/** How what stands in the field is understood. */
export type Understanding =
  | { readonly state: 'empty'; readonly hint: string }
  | { readonly state: 'refused'; readonly text: string; readonly offers: readonly string[] }
  | {
      readonly state: 'understood';
      /** `25.2 MHz` */
      readonly value: string;
      readonly bands: readonly string[];
      /** Null where nothing is judged. */
      readonly normal: boolean | null;
      /** `0.63 of what it should be` */
      readonly fraction: string | null;
      readonly remarks: readonly string[];
      /** What would settle it, where more than one band is possible. */
      readonly settle?: string | null;
      /** Titles of the sections it leads to: none while other readings decide. */
      readonly leads: readonly string[];
    };

interface UnderstandingLineProps {
  readonly understanding: Understanding;
  readonly onOffer: (text: string) => void;
}

/** The line under the field: value, band, share of what it should be, and the way it leads. */
export function UnderstandingLine({ understanding, onOffer }: UnderstandingLineProps): JSX.Element {
  return (
    <div class={`understanding understanding-${understanding.state}`}>
      <div role="status" aria-live="polite" aria-atomic="true">
        {understanding.state === 'empty' && <p class="hint">{understanding.hint}</p>}
        {understanding.state === 'refused' && (
          <p>
            <strong class="refused-mark">Not taken.</strong> {understanding.text}.
          </p>
        )}
        {understanding.state === 'understood' && <Understood {...understanding} />}
      </div>
      {understanding.state === 'refused' && understanding.offers.length > 0 && (
        <p class="offers">
          <span>Did you mean</span>
          {understanding.offers.map((offer) => (
            <button key={offer} type="button" class="offer" onClick={() => onOffer(offer)}>
              {offer}
            </button>
          ))}
        </p>
      )}
    </div>
  );
}

function Understood(props: Extract<Understanding, { state: 'understood' }>): JSX.Element {
  const { value, bands, normal, fraction, remarks, settle = null, leads } = props;
  return (
    <p>
      <Figure text={value} size="large" />
      {bands.length > 0 && (
        <span class={bands.join(' or ') === value ? 'unseen' : 'dot-before'}>
          <strong class={normal === true ? 'word-normal' : normal === false ? 'word-off' : ''}>
            {bands.join(' or ')}
          </strong>
          {normal === true && ', as it should be'}
        </span>
      )}
      {fraction !== null && <span class="dot-before">{fraction}</span>}
      {remarks.map((remark) => (
        <span key={remark} class="dot-before">
          {asShown(remark)}
        </span>
      ))}
      {settle !== null && <span class="dot-before roomy">{asShown(settle)}</span>}
      {leads.length > 0 && (
        <span class="leads">
          <span aria-hidden="true">→ </span>
          <span class="unseen">leads to </span>
          {leads.join(', or ')}
        </span>
      )}
    </p>
  );
}
