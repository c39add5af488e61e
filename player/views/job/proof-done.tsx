import type { JSX } from 'preact';
import type { Session } from '../../../engine/run/index.ts';
import { readingRows } from '../../models/reading-rows.ts';
import { Figure } from '../../parts/figure.tsx';

/** The readings that proved the last repair. */
export function ProofDone({ session }: { readonly session: Session }): JSX.Element {
  const last = session.position.remedies.at(-1);
  const rows = readingRows(session).filter(
    ({ of, judged }) => judged && of !== null && of > (last?.entry ?? 0),
  );
  const is = session.loaded.faults.get(last?.fault ?? '')?.is;
  return (
    <>
      {is !== undefined && <p class="task">{is}</p>}
      <ol class="proof">
        {[...rows].reverse().map(({ reading, is: name, value }) => (
          <li key={reading} class="proof-row proof-normal">
            <span class="proof-name">{name}</span>
            <span class="proof-value">{value !== null && <Figure text={value} size="row" />}</span>
            <span class="proof-word">good</span>
          </li>
        ))}
      </ol>
    </>
  );
}
