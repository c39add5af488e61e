import { type Arc, pointOn } from './arc-geometry.ts';
import { type Lettering, placeLettering } from './lettering.ts';
import { type BandPlace, bandPlaces, type Face } from './scale-geometry.ts';

interface FaceSize {
  readonly face: Face;
  readonly labels: readonly string[];
  readonly unit: string;
  /** Room across, in px. */
  readonly width: number;
  /** Letter size of the text around, in px. */
  readonly em: number;
}

/** Where everything on a face stands, in px. */
export interface FaceLayout {
  readonly arc: Arc;
  readonly places: readonly BandPlace[];
  readonly names: readonly Lettering[];
  readonly limits: readonly Lettering[];
  readonly height: number;
  /** Breadth of the ring of bands. */
  readonly thick: number;
  readonly em: number;
  readonly letter: number;
}

const rowsOf = (words: readonly Lettering[]) => Math.max(0, ...words.map(({ row }) => row)) + 1;

/** Base line of a limit's lettering. */
export const limitBase = (arc: Arc, share: number, row: number, em: number, letter: number): number =>
  pointOn(arc, share, -em * 0.7).y + letter * (0.8 + row * 1.15);

/** Lays a face out for the room it has: the arc takes the width, names stand outside it, limits inside;
 *  the last limit carries the unit. */
export function layOutFace({ face, labels, unit, width, em }: FaceSize): FaceLayout {
  const letter = em * 0.94;
  const thick = em;
  const edge = em * 0.9;
  const flat: Arc = { width: width - edge * 2, rise: Math.min(em * 2.2, width * 0.055), left: edge, top: 0 };
  const places = bandPlaces(face);
  const words = (list: readonly { readonly text: string; readonly share: number }[]) =>
    placeLettering(
      list.map(({ text, share }) => ({ text, share, x: pointOn(flat, share).x })),
      letter,
      width,
    );
  const names = words(places.map(({ band, from, to }) => ({ text: band, share: (from + to) / 2 })));
  const limits = words(
    labels.map((label, index) => ({
      text: index === labels.length - 1 ? `${label} ${unit}` : label,
      share: places[index]?.to ?? 0,
    })),
  );
  const arc: Arc = { ...flat, top: rowsOf(names) * letter * 1.25 + thick + em * 0.35 };
  const lowest = Math.max(...limits.map(({ share, row }) => limitBase(arc, share, row, em, letter)));
  const height = Math.max(lowest, pointOn(arc, 0, -em * 0.3).y) + letter * 0.35;
  return { arc, places, names, limits, height, thick, em, letter };
}
