import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { arcPath, pointOn, ringPath, tickPath } from './arc-geometry.ts';
import { describeFace } from './describe-face.ts';
import { layOutFace, limitBase } from './lay-out-face.ts';
import { Needle, type Pointer } from './needle.tsx';
import { type Face, placeOf } from './scale-geometry.ts';
import { Textures, textureOf } from './textures.tsx';
import { useWidth } from './use-width.ts';

interface GaugeProps {
  readonly face: Face;
  /** Limits as they are lettered on the face, in `unit`. */
  readonly labels: readonly string[];
  readonly unit: string;
  /** The exact value it should have, if there is one. */
  readonly nominal: number | null;
  /** One for each value: many alike share a face. */
  readonly pointers: readonly Pointer[];
  /** Bands the pointer's value may be in. */
  readonly read: readonly string[];
}

/** A scale like a panel meter's: bands side by side with their limits, and a pointer. */
export function Gauge({ face, labels, unit, nominal, pointers, read }: GaugeProps): JSX.Element {
  const box = useRef<HTMLDivElement>(null);
  const id = useId();
  const width = useWidth(box);
  const { arc, places, names, limits, height, thick, em, letter } = layOutFace({
    face,
    labels,
    unit,
    width: width?.px || 640,
    em: width?.em ?? 17,
  });
  return (
    <div class="gauge" ref={box}>
      <svg
        width={arc.width + arc.left * 2}
        height={height}
        role="img"
        aria-label={describeFace(face, labels, unit, read)}
      >
        <Textures id={id} />
        {places.map(({ band, from, to }, index) => (
          <path
            key={band}
            class="band"
            d={ringPath(arc, from, to, 0, thick)}
            fill={`url(#${id}${textureOf(index, places)})`}
          />
        ))}
        {places.flatMap(({ from, to }) =>
          [0.2, 0.4, 0.6, 0.8].map((share) => (
            <path
              key={from + share}
              class="tick-minor"
              d={tickPath(arc, from + (to - from) * share, 0, -em * 0.28)}
            />
          )),
        )}
        <path class="scale-line" d={arcPath(arc, 0, 1)} />
        <path class="scale-back" d={arcPath(arc, 0, 1, thick)} />
        {places.slice(1).map(({ from }) => (
          <path key={from} class="tick" d={tickPath(arc, from, -em * 0.6, thick)} />
        ))}
        {nominal !== null && <path class="nominal" d={tickPath(arc, placeOf(nominal, face), 0, thick)} />}
        {names.map(({ text, x, row, share }) => (
          <text
            key={text}
            class={`band-name${face.normal.includes(text) ? ' band-normal' : ''}${read.includes(text) ? ' band-read' : ''}`}
            x={x}
            y={pointOn(arc, share, thick + em * 0.35).y - row * letter * 1.2}
          >
            {text}
          </text>
        ))}
        {limits.map(({ text, x, row, share }) => (
          <text key={share} class="limit" x={x} y={limitBase(arc, share, row, em, letter)}>
            {text}
          </text>
        ))}
        {pointers.map((pointer, index) => (
          <Needle key={index} arc={arc} face={face} pointer={pointer} thick={thick} em={em} />
        ))}
      </svg>
    </div>
  );
}
