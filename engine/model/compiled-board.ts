import type { StoredQuantity } from './exact.ts';
import type { Measure } from './reading.ts';
import type { SettingValue } from './setting.ts';

/** Something on the board that is set by hand. */
export interface Jumper {
  readonly id: string;
  readonly is: string;
  readonly positions: readonly string[];
}

/** Which positions make a setting what it is. A jumper that a row does not mention may sit anywhere. */
export interface JumperTable {
  readonly setting: string;
  readonly rows: readonly {
    readonly at: Readonly<Record<string, string>>;
    readonly value: SettingValue;
  }[];
}

/** Which sockets may be filled together. */
export interface Fitting {
  readonly id: string;
  readonly is: string;
  readonly sockets: readonly string[];
  readonly together: readonly (readonly string[])[];
}

/** How this board reads where it differs from what a tree expects: the same bands, other limits. */
export interface BoardReading {
  readonly reading: string;
  readonly measure: Measure;
  readonly source: string | null;
}

export interface Picture {
  readonly id: string;
  readonly is: string;
  /** A `data:` address, so that a job carries its pictures along. */
  readonly url: string;
  /** The solder side, as it is seen when the board is turned over. */
  readonly mirrored: boolean;
}

/** A place to touch. */
export interface TestPoint {
  readonly is: string;
  /** Picture id; null where it is told in words only. */
  readonly picture: string | null;
  /** Parts of the picture's width and height, from 0 to 1. */
  readonly x: number;
  readonly y: number;
}

/** What was read on a known-good board. */
export interface Reference {
  readonly reading: string;
  readonly value: StoredQuantity;
  /** ISO 8601 day. */
  readonly date: string;
  readonly instrument: string;
}

/** A board sheet as it is stored with a job: plain JSON. */
export interface CompiledBoard {
  readonly format: 1;
  readonly kind: 'compiled-board';
  /** The file's name without its ending. */
  readonly id: string;
  readonly title: string;
  /** Board classes, as trees name them. */
  readonly boards: readonly string[];
  /** SHA-256 of all that decides how a walk goes. */
  readonly digest: string;
  /** What a setting is on this board unless somebody changed it. */
  readonly settings: Readonly<Record<string, SettingValue>>;
  readonly jumpers: readonly Jumper[];
  readonly tables: readonly JumperTable[];
  readonly fittings: readonly Fitting[];
  readonly readings: readonly BoardReading[];
  readonly pictures: readonly Picture[];
  /** By reading; the first is red or channel 1. */
  readonly points: Readonly<Record<string, readonly TestPoint[]>>;
  readonly references: readonly Reference[];
}
