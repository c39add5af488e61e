import type { Exact } from './exact.ts';

/** One range of an instrument: ± (of reading + of range + digits × resolution). */
export interface InstrumentRange {
  /** Base unit with its qualifier: `V`, `Vpp`, `Ω`, `Hz`. */
  readonly unit: string;
  /** The greatest magnitude it shows, in the base unit. */
  readonly upTo: Exact;
  /** Parts of one: `0.005` for 0.5 %. */
  readonly ofReading: Exact;
  readonly ofRange: Exact;
  readonly digits: number;
  /** What its last digit is worth, in the base unit. */
  readonly resolution: Exact;
}

/** One instrument of the technician's. */
export interface Instrument {
  readonly name: string;
  /** What readings ask for by `with`: `meter`. */
  readonly tool: string;
  readonly ranges: readonly InstrumentRange[];
}

/** How a value near a limit is taken (JCGM 106): as what was shown, or, guarded, as all that it can be. */
export type DecisionRule = 'simple' | 'guarded';

/** What the technician has at the bench. */
export interface Equipment {
  readonly instruments: readonly Instrument[];
  /** Tools that are not there: a reading that asks for one of them cannot be taken. */
  readonly lacking: readonly string[];
  readonly rule: DecisionRule;
}
