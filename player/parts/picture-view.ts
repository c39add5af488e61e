/** Width and height of a picture, in its own pixels. */
export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

/** A place on a picture, in parts of its width and height from 0 to 1. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

/** A part of a picture, in its own pixels. */
export interface PictureView extends PictureSize {
  readonly x: number;
  readonly y: number;
}

/** A closer look never shows less than this part of the picture's shorter side: what stands around must be
 *  recognised. */
const least = 0.36;
/** Room around the outermost places, in parts of the span between them. */
const margin = 1.7;
/** Width by height. */
const shape = 1.5;

/** The part of a picture that shows these places from near, as far from its edges as can be; the whole picture where
 *  they lie far apart. */
export function pictureView(spots: readonly Spot[], size: PictureSize): PictureView {
  const [across, down] = [spanOf(spots, 'x', size.width), spanOf(spots, 'y', size.height)];
  const side = Math.min(size.width, size.height) * least;
  const height = Math.max(side, down.length * margin, (across.length * margin) / shape);
  const width = height * shape;
  if (width > size.width || height > size.height) return { x: 0, y: 0, ...size };
  return {
    x: within(across.middle - width / 2, size.width - width),
    y: within(down.middle - height / 2, size.height - height),
    width,
    height,
  };
}

function spanOf(spots: readonly Spot[], axis: keyof Spot, length: number) {
  const places = spots.map((spot) => spot[axis] * length);
  const [low, high] = [Math.min(...places), Math.max(...places)];
  return { middle: (low + high) / 2, length: high - low };
}

const within = (value: number, most: number): number => Math.max(0, Math.min(value, most));
