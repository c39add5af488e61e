import type { JSX } from 'preact';
import type { Hazard, SignalWord } from '../../engine/model/prose.ts';
import type { ResolveValue } from './inlines.tsx';
import { Prose } from './prose.tsx';

interface HazardPlateProps {
  readonly hazard: Hazard;
  readonly resolve?: ResolveValue;
  /** Already acknowledged: drawn smaller, the words stay. */
  readonly quiet?: boolean;
}

const signalText: Record<SignalWord, string> = {
  danger: 'Danger',
  warning: 'Warning',
  caution: 'Caution',
  notice: 'Notice',
};

/** The safety alert symbol stands with the three words that concern injury, never with Notice (ANSI Z535.6). */
const alerts: Record<SignalWord, boolean> = { danger: true, warning: true, caution: true, notice: false };

function AlertMark(): JSX.Element {
  return (
    <svg class="alert-mark" viewBox="0 0 24 21" aria-hidden="true">
      <path d="M12 1 23 20H1Z" fill="currentColor" />
      <path d="M12 7v6.4M12 15.6v1.9" stroke="var(--word-colour)" stroke-width="2.4" />
    </svg>
  );
}

/** What can happen and how to avoid it, under its signal word. */
export function HazardPlate({ hazard, resolve, quiet = false }: HazardPlateProps): JSX.Element {
  return (
    <section
      class={`hazard hazard-${hazard.word}${quiet ? ' hazard-quiet' : ''}`}
      aria-label={signalText[hazard.word]}
    >
      <p class="hazard-word">
        {alerts[hazard.word] && <AlertMark />}
        {signalText[hazard.word]}
      </p>
      <Prose blocks={hazard.blocks} {...(resolve && { resolve })} />
    </section>
  );
}
