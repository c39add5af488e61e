import type { JSX } from 'preact';
import type { Fault } from '../../../engine/model/fault.ts';
import type { Drill, DrillCheck } from '../../../engine/practice/drill.ts';
import { sessionOfDrill } from '../../models/practice/session-of-drill.ts';
import { Prose } from '../../parts/prose.tsx';
import { useResolve } from '../job/use-resolve.ts';

interface NextCheckProps {
  readonly drill: Drill;
  readonly check: DrillCheck;
}

/** What the tree asks now, with its words. */
export function NextCheck({ drill, check }: NextCheckProps): JSX.Element {
  const session = sessionOfDrill(drill);
  const resolve = useResolve(session);
  const section = drill.tree.sections.find(({ id }) => id === check.section);
  return (
    <section class="next-check" aria-label="What the tree asks now">
      <p class="engraved">The tree asks now</p>
      <h2>{check.reading.is}</h2>
      {section !== undefined && (
        <>
          <p class="hint">{section.title}</p>
          <Prose blocks={section.blocks} resolve={resolve} />
        </>
      )}
    </section>
  );
}

/** Where the tree has come to: a fault, or an end without one. */
export function TreeEnds({ led }: { readonly led: Fault | null }): JSX.Element {
  return (
    <section class="next-check" aria-label="Where the tree leads">
      {led !== null ? (
        <>
          <p class="engraved">The tree leads to</p>
          <h2>{led.is}</h2>
        </>
      ) : (
        <>
          <p class="engraved">The tree has come to an end</p>
          <p>It names no fault for these readings. Measure on, or name one yourself.</p>
        </>
      )}
    </section>
  );
}
