import type { JSX } from 'preact';
import { type Arc, ringPath, tickPath } from './arc-geometry.ts';
import { type Face, placeOf } from './scale-geometry.ts';

/** What the pointer shows: one value with the width of its doubt, or a stretch with an open end where the reading had none. */
export interface Pointer {
  readonly from: number | null;
  readonly to: number | null;
  /** What the instrument showed, where that was one value. */
  readonly at?: number;
}

interface NeedleProps {
  readonly arc: Arc;
  readonly face: Face;
  readonly pointer: Pointer;
  readonly thick: number;
  readonly em: number;
}

/** The pointer on the scale: as wide as the reading is uncertain. */
export function Needle({ arc, face, pointer, thick, em }: NeedleProps): JSX.Element {
  const from = pointer.from === null ? 0 : placeOf(pointer.from, face);
  const to = pointer.to === null ? 1 : placeOf(pointer.to, face);
  const ends = [pointer.from === null ? [] : [from], pointer.to === null || to === from ? [] : [to]].flat();
  const edges = pointer.at === undefined ? ends : [placeOf(pointer.at, face)];
  const sides = pointer.at === undefined ? [] : ends;
  return (
    <g class="needle">
      {to > from && <path class="needle-width" d={ringPath(arc, from, to, -em * 0.35, thick + em * 0.15)} />}
      {sides.map((share) => (
        <path
          key={`side ${share}`}
          class="needle-side"
          d={tickPath(arc, share, -em * 0.35, thick + em * 0.15)}
        />
      ))}
      {edges.map((share) => {
        const path = tickPath(arc, share, -em * 0.55, thick + em * 0.15);
        return (
          <g key={share}>
            {sides.length === 0 && <path class="needle-halo" d={path} />}
            <path class="needle-edge" d={path} />
          </g>
        );
      })}
    </g>
  );
}
