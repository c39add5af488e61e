/** What was known at one moment of a drill. */
export interface Moment {
  /** Bench minutes since the start. */
  readonly minute: number;
  /** How much is still open, in bits: log2 of the number of equally likely suspects. */
  readonly bits: number;
  /** How likely the true cause was held to be, 0..1. */
  readonly right: number;
}

/** Where things stand, in px. */
export interface NarrowingFrame {
  readonly left: number;
  readonly width: number;
  /** The middle of the band. */
  readonly middle: number;
  /** Half of the band's height at its widest. */
  readonly half: number;
  /** Minutes that the whole width stands for. */
  readonly minutes: number;
  /** Bits that half the height stands for. */
  readonly bits: number;
}

/** Where a minute stands. */
export const xOf = ({ left, width, minutes }: NarrowingFrame, minute: number): number =>
  left + (Math.min(Math.max(minute, 0), minutes) / minutes) * width;

const point = (x: number, y: number): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** Outline of the band of suspects, as wide as what is open, to the last moment:
 *
 *      ▔▔╲__
 *           ╲______      a check's minutes slope from what was open before it to what was open after
 *      ▁▁╱‾‾╱‾‾‾‾‾‾
 */
export function bandPath(frame: NarrowingFrame, moments: readonly Moment[]): string {
  return around(frame, moments, ({ bits }) => bits / frame.bits);
}

/** Outline of the true cause within the band: the part of its height that is the true cause's share. */
export function corePath(frame: NarrowingFrame, moments: readonly Moment[]): string {
  return around(frame, moments, ({ bits, right }) => (bits / frame.bits) * right);
}

function around(
  frame: NarrowingFrame,
  moments: readonly Moment[],
  shareOf: (moment: Moment) => number,
): string {
  const upper = moments.map((moment) =>
    point(xOf(frame, moment.minute), frame.middle - frame.half * shareOf(moment)),
  );
  const lower = moments
    .toReversed()
    .map((moment) => point(xOf(frame, moment.minute), frame.middle + frame.half * shareOf(moment)));
  return `M${[...upper, ...lower].join('L')}Z`;
}

const steps = [1, 2, 5, 10, 15, 30, 60, 120, 240];

/** Minutes that get a number on the rule: as many as stand apart by `room` px. */
export function minuteTicks({ minutes, width }: NarrowingFrame, room: number): readonly number[] {
  const step = steps.find((one) => (one / minutes) * width >= room) ?? Math.ceil(minutes);
  return Array.from({ length: Math.floor(minutes / step) + 1 }, (_, index) => index * step);
}

/** The row in which each mark stands, so that no two touch: `apart` px from one to the next in a row. */
export function rowsOfMarks(places: readonly number[], apart: number): readonly number[] {
  const ends: number[] = [];
  return places.map((x) => {
    const free = ends.findIndex((end) => x - end >= apart);
    const row = free < 0 ? ends.length : free;
    ends[row] = x;
    return row;
  });
}
