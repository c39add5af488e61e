import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandPlaces, type Face, placeOf } from '../../../player/parts/scale-geometry.ts';

const faces = fc
  .uniqueArray(fc.integer({ min: -2000, max: 2000 }), { minLength: 1, maxLength: 6 })
  .chain((limits) =>
    fc.record({
      limits: fc.constant([...limits].sort((a, b) => a - b)),
      normal: fc.integer({ min: 0, max: limits.length }),
    }),
  )
  .map(({ limits, normal }): Face => {
    const bands = Array.from({ length: limits.length + 1 }, (_, index) => `band${index}`);
    return { limits, bands, normal: [`band${normal}`] };
  });
const values = fc.double({ min: -1e4, max: 1e4, noNaN: true });

describe('bandPlaces()', () => {
  test('lays the bands side by side over the whole face', () => {
    fc.assert(
      fc.property(faces, (face) => {
        const places = bandPlaces(face);
        expect(places[0]?.from).toBe(0);
        expect(places.at(-1)?.to).toBeCloseTo(1, 9);
        for (const [index, place] of places.entries()) {
          expect(place.to).toBeGreaterThan(place.from);
          if (index > 0) expect(place.from).toBe(places[index - 1]?.to);
        }
      }),
    );
  });

  test('gives the normal band more room than its neighbours', () => {
    const [low, good, high] = bandPlaces({ bands: ['low', 'good', 'high'], normal: ['good'] });
    const width = (place: typeof low) => (place?.to ?? 0) - (place?.from ?? 0);
    expect(width(good)).toBeGreaterThan(width(low));
    expect(width(low)).toBeCloseTo(width(high), 9);
  });
});

describe('placeOf()', () => {
  test('never leaves the face, and never turns round', () => {
    fc.assert(
      fc.property(faces, values, values, (face, a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        const [from, to] = [placeOf(low, face), placeOf(high, face)];
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeLessThanOrEqual(1);
        expect(to).toBeGreaterThanOrEqual(from - 1e-12);
      }),
    );
  });

  test('puts a value into the stretch of its own band', () => {
    fc.assert(
      fc.property(faces, values, (face, value) => {
        const index = face.limits.filter((limit) => value > limit).length;
        const place = bandPlaces(face)[index];
        const at = placeOf(value, face);
        expect(at).toBeGreaterThanOrEqual((place?.from ?? 0) - 1e-12);
        expect(at).toBeLessThanOrEqual((place?.to ?? 1) + 1e-12);
      }),
    );
  });

  test('reads linearly to zero in the lowest band of a positive scale', () => {
    const face: Face = { bands: ['low', 'good'], limits: [4], normal: ['good'] };
    const [low] = bandPlaces(face);
    expect(placeOf(0, face)).toBe(0);
    expect(placeOf(2, face)).toBeCloseTo((low?.to ?? 0) / 2, 9);
  });

  test('reads linearly to zero in the top band of a negative rail', () => {
    const face: Face = { bands: ['high', 'good', 'low'], limits: [-13.2, -10.8], normal: ['good'] };
    expect(placeOf(0, face)).toBeCloseTo(1, 9);
    expect(placeOf(-10.8, face)).toBeCloseTo(bandPlaces(face)[1]?.to ?? 0, 9);
  });
});
