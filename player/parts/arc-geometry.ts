/** A shallow arc like a panel meter's scale: `width` across, its ends `rise` lower than its middle. */
export interface Arc {
  readonly width: number;
  readonly rise: number;
  /** Where the middle of the arc stands. */
  readonly left: number;
  readonly top: number;
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

function circleOf({ width, rise }: Arc): { readonly radius: number; readonly half: number } {
  const radius = (width * width) / (8 * rise) + rise / 2;
  return { radius, half: Math.asin(width / 2 / radius) };
}

/** The point at `share` (0..1) of the arc, `out` px outside of it. */
export function pointOn(arc: Arc, share: number, out = 0): Point {
  const { radius, half } = circleOf(arc);
  const angle = (share * 2 - 1) * half;
  return {
    x: arc.left + arc.width / 2 + Math.sin(angle) * (radius + out),
    y: arc.top + radius - Math.cos(angle) * (radius + out),
  };
}

const at = ({ x, y }: Point) => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** An SVG path along the arc from one share to another. */
export function arcPath(arc: Arc, from: number, to: number, out = 0): string {
  const radius = circleOf(arc).radius + out;
  return `M${at(pointOn(arc, from, out))}A${radius} ${radius} 0 0 1 ${at(pointOn(arc, to, out))}`;
}

/** An SVG path around the piece of the ring between two shares and two distances. */
export function ringPath(arc: Arc, from: number, to: number, inner: number, outer: number): string {
  const { radius } = circleOf(arc);
  const [outside, inside] = [radius + outer, radius + inner];
  return (
    `M${at(pointOn(arc, from, outer))}A${outside} ${outside} 0 0 1 ${at(pointOn(arc, to, outer))}` +
    `L${at(pointOn(arc, to, inner))}A${inside} ${inside} 0 0 0 ${at(pointOn(arc, from, inner))}Z`
  );
}

/** An SVG path of a tick across the arc. */
export function tickPath(arc: Arc, share: number, inner: number, outer: number): string {
  return `M${at(pointOn(arc, share, inner))}L${at(pointOn(arc, share, outer))}`;
}
