import type { JSX } from 'preact';
import type { Hazard } from '../../../engine/model/prose.ts';
import type { Warning } from '../../../engine/practice/drill.ts';
import { asShown } from '../../parts/as-shown.ts';
import { HazardPlate } from '../../parts/hazard-plate.tsx';
import type { ResolveValue } from '../../parts/inlines.tsx';

interface StandsBeforeProps {
  readonly warnings: readonly Warning[];
  readonly hazards: readonly Hazard[];
  readonly resolve: ResolveValue;
}

/** What has to be read or done before a check: loud until it was. */
export function StandsBefore({ warnings, hazards, resolve }: StandsBeforeProps): JSX.Element {
  const isDue = warnings.some(({ kind }) => kind === 'hazard');
  const others = warnings.filter(({ kind }) => kind !== 'hazard');
  return (
    <>
      {hazards.map((hazard) => (
        <HazardPlate key={hazard.digest} hazard={hazard} resolve={resolve} quiet={!isDue} />
      ))}
      {others.length > 0 && (
        <section class="stands-before" aria-label="What comes first">
          <h2>First</h2>
          <ul>
            {others.map(({ text }) => (
              <li key={text}>{asShown(text)}.</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}
