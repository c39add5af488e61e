/** Something that happened at a minute; its number stands in the list beside the drawing. */
export interface TimeMark {
  readonly minute: number;
  readonly number: number;
  readonly kind: 'told' | 'told nothing' | 'hint' | 'wrong' | 'right' | 'given up';
  /** A warning was passed over for it. */
  readonly warned: boolean;
}

type Outline = (x: number, y: number, r: number) => string;

const round: Outline = (x, y, r) => `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0Z`;
const square: Outline = (x, y, r) => `M${x - r * 0.9} ${y - r * 0.9}h${r * 1.8}v${r * 1.8}h${-r * 1.8}Z`;
const diamond: Outline = (x, y, r) => {
  const d = r * 1.25;
  return `M${x} ${y - d}l${d} ${d}l${-d} ${d}l${-d} ${-d}Z`;
};

/** Shapes tell what happened, so that no colour need: a check is round, filled where it told something; a hint is square; a name
 *  is a diamond, filled where it was the cause. */
const outlines: Record<TimeMark['kind'], Outline> = {
  told: round,
  'told nothing': round,
  hint: square,
  wrong: diamond,
  right: diamond,
  'given up': square,
};

/** The outline of a mark around a point. */
export const markPath = (kind: TimeMark['kind'], x: number, y: number, r: number): string =>
  outlines[kind](x, y, r);
