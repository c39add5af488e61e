import { pointsOf } from '../../../engine/board/index.ts';
import type { CompiledBoard, Picture } from '../../../engine/model/compiled-board.ts';
import type { Reading } from '../../../engine/model/reading.ts';

/** A place on a picture, and what is measured there. */
export interface BoardPlace {
  readonly x: number;
  readonly y: number;
  readonly is: string;
  /** Reading ids. */
  readonly readings: readonly string[];
  /** All of them were taken. */
  readonly done: boolean;
}

export interface PictureOfPlaces {
  readonly picture: Picture;
  readonly places: readonly BoardPlace[];
}

interface Asked {
  readonly reading: Reading;
  readonly taken: readonly string[];
}

/** Points closer together than this part of the picture are one place. */
const same = 0.012;

/** Where on each picture these checks are taken: a check stands at the first point that the picture shows. */
export function boardPlaces(board: CompiledBoard, checks: readonly Asked[]): readonly PictureOfPlaces[] {
  return board.pictures.flatMap((picture) => {
    const places = placesOn(board, picture.id, checks);
    return places.length === 0 ? [] : [{ picture, places }];
  });
}

function placesOn(board: CompiledBoard, picture: string, checks: readonly Asked[]): readonly BoardPlace[] {
  const places: BoardPlace[] = [];
  for (const { reading, taken } of checks) {
    const point = pointsOf(board, reading).find((one) => one.picture === picture);
    if (point === undefined) continue;
    const at = places.findIndex(({ x, y }) => Math.hypot(x - point.x, y - point.y) < same);
    const held = places[at] ?? { x: point.x, y: point.y, is: point.is, readings: [], done: true };
    const place = {
      ...held,
      readings: [...held.readings, reading.id],
      done: held.done && taken.length > 0,
    };
    if (at < 0) places.push(place);
    else places[at] = place;
  }
  return places;
}

/** The place nearest to where somebody pressed, no farther off than `reach` parts of the picture's width.
 *  @param tall height of the picture for each part of its width */
export function nearestPlace(
  places: readonly BoardPlace[],
  x: number,
  y: number,
  tall: number,
  reach: number,
): BoardPlace | null {
  const away = (place: BoardPlace) => Math.hypot(place.x - x, (place.y - y) * tall);
  const [nearest] = places.toSorted((a, b) => away(a) - away(b));
  return nearest !== undefined && away(nearest) <= reach ? nearest : null;
}
