import { pointsOf } from '../../engine/board/index.ts';
import type { CompiledBoard, Picture, TestPoint } from '../../engine/model/compiled-board.ts';
import type { Reading } from '../../engine/model/reading.ts';

/** A place with the mark that stands beside it on its picture. */
export interface Place {
  readonly mark: string;
  readonly point: TestPoint;
}

/** Places on one picture of the board. */
export interface PlacesOnPicture {
  readonly picture: Picture;
  readonly touch: readonly Place[];
  /** Other named places close by, marked with letters. */
  readonly near: readonly Place[];
}

/** Places closer together than this part of the picture are one place. */
const same = 0.008;
/** How far off, in parts of the picture, a place still helps to find another. */
const close = 0.16;
const mostNear = 3;

/** Where a reading is taken on this board, picture by picture. A single place needs no mark. */
export function placesOf(
  board: CompiledBoard,
  reading: Pick<Reading, 'id' | 'like'>,
): readonly PlacesOnPicture[] {
  const points = pointsOf(board, reading);
  const touch = points.map((point, index) => ({ mark: points.length > 1 ? String(index + 1) : '', point }));
  return board.pictures.flatMap((picture) => {
    const here = touch.filter(({ point }) => point.picture === picture.id);
    return here.length === 0 ? [] : [{ picture, touch: here, near: nearPlaces(board, picture.id, here) }];
  });
}

function nearPlaces({ points }: CompiledBoard, picture: string, touch: readonly Place[]): readonly Place[] {
  const away = (point: TestPoint) => Math.min(...touch.map((place) => distance(place.point, point)));
  const found: TestPoint[] = [];
  const others = Object.values(points)
    .flat()
    .filter((point) => point.picture === picture && away(point) > same && away(point) < close)
    .toSorted((a, b) => away(a) - away(b));
  for (const point of others) {
    if (found.length < mostNear && found.every((one) => distance(one, point) > same * 2)) found.push(point);
  }
  return found.map((point, index) => ({ mark: 'abc'.charAt(index), point }));
}

const distance = (a: TestPoint, b: TestPoint): number => Math.hypot(a.x - b.x, a.y - b.y);
