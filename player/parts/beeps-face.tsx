import type { JSX } from 'preact';
import type { BeepPattern } from '../../engine/model/reading.ts';
import { beepText } from '../../engine/scale/index.ts';
import { BeepMarks } from './beep-marks.tsx';

interface BeepsFaceProps {
  readonly patterns: readonly BeepPattern[];
  readonly normal: readonly string[] | 'any';
  /** What was heard, as a stored pattern; empty while nothing is understood. */
  readonly heard: string;
  readonly onChoose: (text: string) => void;
  /** One more beep, as it is heard. */
  readonly onBeep: (beep: 'long' | 'short') => void;
}

/** The face of what is heard: the known patterns side by side, and two buttons to tap along with the board. */
export function BeepsFace({ patterns, normal, heard, onChoose, onBeep }: BeepsFaceProps): JSX.Element {
  const isNormal = (band: string) => normal !== 'any' && normal.includes(band);
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset's legend would repeat the reading's name */}
      <div class="beeps" role="group" aria-label="Known patterns">
        {patterns.map(({ pattern, band, means }) => (
          <button
            key={pattern}
            type="button"
            class={`option beep-row${isNormal(band) ? ' option-normal' : ''}`}
            aria-pressed={pattern === heard}
            onClick={() => onChoose(beepText(pattern))}
          >
            <BeepMarks pattern={pattern} />
            <span class="beep-text">{beepText(pattern)}</span>
            <span>
              <strong>{band}</strong>
              {isNormal(band) && <span class="option-mark"> normal</span>}
              {means !== null && <span class="beep-means"> {means}</span>}
            </span>
          </button>
        ))}
      </div>
      <p class="tap-along">
        <span>Tap along:</span>
        {(['long', 'short'] as const).map((beep) => (
          <button key={beep} type="button" class="action" onClick={() => onBeep(beep)}>
            {beep}
          </button>
        ))}
      </p>
    </>
  );
}
