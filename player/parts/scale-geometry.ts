/** The face of a scale in numbers: limits low end first, `limits[i]` between `bands[i]` and `bands[i + 1]`. */
export interface Face {
  readonly bands: readonly string[];
  readonly limits: readonly number[];
  readonly normal: readonly string[];
}

/** A band's place on the face, as shares of its width. */
export interface BandPlace {
  readonly band: string;
  readonly from: number;
  readonly to: number;
  readonly normal: boolean;
}

/** A normal band gets more room: that is where a reading is compared most closely. */
const roomOf = (normal: boolean) => (normal ? 1.5 : 1);

/** The bands side by side over the whole face. */
export function bandPlaces({ bands, normal }: Pick<Face, 'bands' | 'normal'>): BandPlace[] {
  const rooms = bands.map((band) => roomOf(normal.includes(band)));
  const whole = rooms.reduce((sum, room) => sum + room, 0);
  let from = 0;
  return bands.map((band, index) => {
    const to = from + (rooms[index] ?? 1) / whole;
    const place = { band, from, to, normal: normal.includes(band) };
    from = to;
    return place;
  });
}

/** How far (0..1) a value lies into a band that has no far end: `distance` from its limit, `room` to half-way. */
const fade = (distance: number, room: number) => distance / (distance + room);

/** Where a value stands on the face, 0 at its left edge and 1 at its right.
 *  Between two limits the face is linear. An open band runs linearly to zero where zero lies in it,
 *  and narrows towards the edge beyond. */
export function placeOf(value: number, face: Face): number {
  const places = bandPlaces(face);
  const first = face.limits[0];
  const last = face.limits.at(-1);
  if (first === undefined || last === undefined) return 0.5;
  const index = face.limits.filter((limit) => value > limit).length;
  const place = places[index];
  if (place === undefined) return 0.5;
  return place.from + (place.to - place.from) * shareWithin(value, index, face.limits);
}

function shareWithin(value: number, index: number, limits: readonly number[]): number {
  const lower = limits[index - 1];
  const upper = limits[index];
  const room = typicalRoom(limits);
  if (lower !== undefined && upper !== undefined) return (value - lower) / (upper - lower || 1);
  if (upper !== undefined) {
    if (upper > 0 && value >= 0) return value / upper;
    return upper > 0 ? 0 : 1 - fade(upper - value, room);
  }
  if (lower === undefined) return 0.5;
  if (lower < 0 && value <= 0) return 1 - value / lower;
  return lower < 0 ? 1 : fade(value - lower, room);
}

function typicalRoom(limits: readonly number[]): number {
  const first = limits[0] ?? 0;
  const last = limits.at(-1) ?? 0;
  return Math.max(last - first, Math.abs(last) / 2, Math.abs(first) / 2) || 1;
}
