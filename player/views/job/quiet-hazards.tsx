import type { JSX } from 'preact';
import { hazardsHere, type Session } from '../../../engine/run/index.ts';
import { HazardPlate } from '../../parts/hazard-plate.tsx';
import { useResolve } from './use-resolve.ts';

/** The hazards of this step, still in sight after they were acknowledged. */
export function QuietHazards({ session }: { readonly session: Session }): JSX.Element | null {
  const resolve = useResolve(session);
  const hazards = hazardsHere(session);
  if (hazards.length === 0) return null;
  return (
    <div class="quiet-hazards">
      {hazards.map((hazard) => (
        <HazardPlate key={hazard.digest} hazard={hazard} resolve={resolve} quiet />
      ))}
    </div>
  );
}
