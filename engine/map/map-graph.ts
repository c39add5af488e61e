/** The symbols of ISO 5807 (flowcharts) that a map is drawn with. */
export type MapSymbol =
  /** Begin and end. */
  | 'terminator'
  /** Work that is done. */
  | 'process'
  /** Ways part here. */
  | 'decision'
  /** Somebody reads something and types it. */
  | 'manual-input'
  /** Work that is told elsewhere. */
  | 'predefined-process'
  /** The line goes on at the other circle with the same number. */
  | 'connector'
  /** No symbol: the condition that stands on a line. */
  | 'words';

export interface MapNode {
  readonly id: string;
  readonly symbol: MapSymbol;
  /** The section it stands for, or leads to; null where there is none. */
  readonly section: string | null;
  /** The section's printed number. */
  readonly number: string | null;
  readonly title: string;
  /** Smaller lines below the title: readings, minutes, a signal word. */
  readonly notes: readonly string[];
  /** What it is, for people who do not see it: `check`, `goes on at`. */
  readonly role: string;
}

/** A line from one symbol to the next. */
export interface MapEdge {
  readonly from: string;
  readonly to: string;
  /** Whether it reaches its symbol here: a line into the words of a condition has no arrow. */
  readonly arrow: boolean;
  /** Whether the lower symbol stands right below the upper one, as the diamond of a check does. */
  readonly close: boolean;
}

/** A part of a map that is drawn in one piece. */
export interface MapChart {
  readonly id: string;
  /** The call whose inside it shows, as a heading; null for a part of the tree itself. */
  readonly heading: string | null;
  readonly nodes: readonly MapNode[];
  readonly edges: readonly MapEdge[];
}

/** A tree as a flowchart, before anything has a place. */
export interface MapGraph {
  readonly title: string;
  readonly symptom: string;
  readonly charts: readonly MapChart[];
}
