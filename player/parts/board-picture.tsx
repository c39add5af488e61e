import type { ComponentChildren, JSX } from 'preact';
import { type PictureView, pictureView, type Spot } from './picture-view.ts';
import { usePicture } from './use-picture.ts';

/** A place on the picture with the mark that a list beside it uses. */
export interface MarkedSpot extends Spot {
  readonly mark: string;
  /** `touch` is ringed; `near` only helps to find it. */
  readonly kind: 'touch' | 'near';
}

interface BoardPictureProps {
  readonly url: string;
  /** What it shows, with the places in words: for those who do not see it. */
  readonly says: string;
  readonly spots: readonly MarkedSpot[];
  readonly whole?: boolean;
  /** What stands below it. */
  readonly children: ComponentChildren;
}

/** A picture of the board: the places from near, and where on the board that is. */
export function BoardPicture(props: BoardPictureProps): JSX.Element | null {
  const { url, says, spots, whole = false, children } = props;
  const size = usePicture(url);
  if (size === 'none') return <p class="hint">The picture cannot be shown: {says}.</p>;
  if (size === null) return <div class="picture picture-waiting" aria-hidden="true" />;
  const all: PictureView = { x: 0, y: 0, ...size };
  const touched = spots.filter(({ kind }) => kind === 'touch');
  const near = whole || touched.length === 0 ? all : pictureView(touched, size);
  const isWhole = near.width === all.width;
  const unit = Math.max(near.width / 1.5, near.height) / 100;
  const image = <image href={url} width={size.width} height={size.height} />;
  return (
    <figure class={`picture${isWhole ? ' picture-whole' : ''}`}>
      <svg class="picture-near" viewBox={boxOf(near)} role="img" aria-label={says}>
        {image}
        {spots.map((spot) => (
          <Ring
            key={`${spot.kind} ${spot.mark}`}
            spot={spot}
            x={spot.x * size.width}
            y={spot.y * size.height}
            unit={unit}
            right={near.x + near.width}
          />
        ))}
      </svg>
      <figcaption class="picture-foot">
        {!isWhole && (
          <svg class="picture-all" viewBox={boxOf(all)} aria-hidden="true">
            {image}
            <rect class="picture-frame-under" {...near} vector-effect="non-scaling-stroke" />
            <rect class="picture-frame" {...near} vector-effect="non-scaling-stroke" />
          </svg>
        )}
        <div class="picture-says">{children}</div>
      </figcaption>
    </figure>
  );
}

const boxOf = ({ x, y, width, height }: PictureView): string => `${x} ${y} ${width} ${height}`;

interface RingProps {
  readonly spot: MarkedSpot;
  readonly x: number;
  readonly y: number;
  /** A hundredth of what is in sight. */
  readonly unit: number;
  /** Right edge of what is in sight: a mark that would pass it stands on the left. */
  readonly right: number;
}

/** A ring of two strokes, so that it stands out on a light and on a dark board. */
function Ring({ spot: { mark, kind }, x, y, unit, right }: RingProps): JSX.Element {
  const radius = unit * (kind === 'touch' ? 5 : 2);
  const half = unit * 3.6;
  const side = x + radius + half * 2 + unit > right ? -1 : 1;
  const at = x + side * (radius + half + unit * 0.6);
  return (
    <g class={`ring ring-${kind}`}>
      <circle class="ring-under" cx={x} cy={y} r={radius} stroke-width={unit * 2.2} />
      <circle class="ring-over" cx={x} cy={y} r={radius} stroke-width={unit} />
      {mark !== '' && (
        <>
          <rect
            class="ring-plate"
            x={at - half}
            y={y - half}
            width={half * 2}
            height={half * 2}
            rx={kind === 'touch' ? unit * 0.6 : half}
          />
          <text class="ring-mark" x={at} y={y} font-size={unit * 5.4} dy="0.36em">
            {mark}
          </text>
        </>
      )}
    </g>
  );
}
