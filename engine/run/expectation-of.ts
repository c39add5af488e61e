import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { type Because, expectedBecause, expectedText, normalBandsOf, resolveScale } from '../scale/index.ts';
import type { Session } from './session.ts';

/** What this board should show in a reading at its present settings. */
export interface Expectation {
  /** `39.6 MHz .. 40.4 MHz`; empty where nothing is judged. */
  readonly text: string;
  /** The settings it rests on. */
  readonly because: readonly Because[];
  readonly normal: readonly string[];
  /** Null for options and codes. */
  readonly resolved: ResolvedScale | null;
}

export function expectationOf(session: Session, reading: Reading): Expectation {
  return {
    text: reading.normal === 'any' ? '' : expectedText(reading, session),
    because: expectedBecause(reading, session, session.loaded.settings),
    normal: normalBandsOf(reading),
    resolved: reading.measure.kind === 'quantity' ? resolveScale(reading, session) : null,
  };
}
