import { findings, type Session } from '../../engine/run/index.ts';
import { findingWords } from './finding-words.ts';

/** What the last entry let the readings say together, that they did not say before. */
export const freshFindings = (session: Session): readonly string[] =>
  findings(session)
    .filter(({ known }) => known.entry === session.entries.length - 1)
    .map(findingWords);
