import type { JSX, TargetedMouseEvent } from 'preact';
import type { Picture } from '../../../engine/model/compiled-board.ts';
import { type BoardPlace, nearestPlace } from '../../models/practice/board-places.ts';
import { usePicture } from '../../parts/use-picture.ts';

interface PointMapProps {
  readonly picture: Picture;
  readonly places: readonly BoardPlace[];
  readonly chosen: BoardPlace | null;
  readonly onPick: (place: BoardPlace) => void;
}

/** How far from a point a press still counts, in px: half of what a finger covers. */
const reach = 26;

/** The whole board with every point that can be measured: a press picks the nearest. */
export function PointMap({ picture, places, chosen, onPick }: PointMapProps): JSX.Element | null {
  const size = usePicture(picture.url);
  if (size === 'none') return null;
  if (size === null) return <div class="picture picture-waiting" aria-hidden="true" />;
  const tall = size.height / size.width;
  const press = (event: TargetedMouseEvent<SVGSVGElement>) => {
    const { left, top, width, height } = event.currentTarget.getBoundingClientRect();
    const at = [(event.clientX - left) / width, (event.clientY - top) / height] as const;
    const place = nearestPlace(places, ...at, tall, reach / width);
    if (place !== null) onPick(place);
  };
  const unit = Math.max(size.width, size.height) / 100;
  return (
    <figure class="picture picture-whole point-map">
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: the list beside it offers every one of them by keyboard */}
      <svg
        class="picture-near"
        viewBox={`0 0 ${size.width} ${size.height}`}
        role="img"
        aria-label={`${picture.is}, with ${places.length} points. The list offers the same`}
        onClick={press}
      >
        <image href={picture.url} width={size.width} height={size.height} />
        {places.map((place) => (
          <g
            key={`${place.x} ${place.y}`}
            class={`spot-mark${place.done ? ' spot-done' : ''}${chosen?.x === place.x && chosen.y === place.y ? ' spot-chosen' : ''}`}
          >
            <title>{place.is}</title>
            <circle class="spot-reach" cx={place.x * size.width} cy={place.y * size.height} r={unit * 2.4} />
            <circle class="spot-under" cx={place.x * size.width} cy={place.y * size.height} r={unit * 1.15} />
            <circle class="spot-over" cx={place.x * size.width} cy={place.y * size.height} r={unit * 0.8} />
          </g>
        ))}
      </svg>
      <figcaption class="hint">
        {picture.is}
        {picture.mirrored && <strong> Left and right are swapped</strong>}
      </figcaption>
    </figure>
  );
}
