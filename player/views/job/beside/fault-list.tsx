import type { JSX } from 'preact';
import { type FaultStanding, nameHere, type Session } from '../../../../engine/run/index.ts';
import { bandWords } from '../../../models/band-words.ts';
import { asShown } from '../../../parts/as-shown.ts';

interface FaultListProps {
  readonly session: Session;
  readonly standings: readonly FaultStanding[];
}

/** Faults with what speaks against them. */
export function FaultList({ session, standings }: FaultListProps): JSX.Element {
  if (standings.length === 0) return <p class="hint">None.</p>;
  return (
    <ul class="rows">
      {standings.map(({ fault, state, contradictions }) => (
        <li key={fault.id} class={`row fault-${state.replace(' ', '-')}`}>
          <span class="row-fault">{fault.is}</span>
          {state !== 'possible' && state !== 'ruled out' && <span class="row-band">{state}</span>}
          {contradictions.length > 0 && (
            <span class="row-more">
              {asShown(contradictions.map((one) => contradictionWords(session, one)).join('; '))}
            </span>
          )}
        </li>
      ))}
    </ul>
  );
}

function contradictionWords(
  session: Session,
  { reading, showed }: FaultStanding['contradictions'][number],
): string {
  const found = session.loaded.readings.get(reading);
  return `${nameHere(session, reading)}: ${bandWords(found, showed)}`;
}
