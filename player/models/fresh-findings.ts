import { findings, type Session } from '../../engine/run/index.ts';
import { findingWords } from './finding-words.ts';

/** What the readings say together, where the last entry has a part in it. */
export const freshFindings = (session: Session): readonly string[] =>
  findings(session)
    .filter(({ known, from }) => [known, ...from].some(({ entry }) => entry === session.entries.length - 1))
    .map(findingWords);
