import type { JSX } from 'preact';
import type { Lack, Session } from '../../../engine/run/index.ts';
import { lackWords } from '../../models/lack-words.ts';
import { asShown } from '../../parts/as-shown.ts';

interface LackListProps {
  readonly session: Session;
  readonly lacking: readonly Lack[];
}

/** What must have been seen, and how it stands. */
export function LackList({ session, lacking }: LackListProps): JSX.Element {
  return (
    <ul class="lack-list">
      {lacking.map((lack) => {
        const { wanted, now } = lackWords(session, lack);
        return (
          <li key={lack.reading.id}>
            <strong>{lack.reading.is}</strong>
            <span>
              must be <strong>{asShown(wanted)}</strong>
            </span>
            <span class="lack-now">{asShown(now)}</span>
          </li>
        );
      })}
    </ul>
  );
}
