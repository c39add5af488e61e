import type { JSX } from 'preact';
import { pointsOf } from '../../../engine/board/index.ts';
import type { Reading } from '../../../engine/model/reading.ts';
import type { Session } from '../../../engine/run/index.ts';
import { type PlacesOnPicture, placesOf } from '../../models/places-of.ts';
import { BoardPicture } from '../../parts/board-picture.tsx';
import { TouchPoints } from '../../parts/touch-points.tsx';

interface WhereToTouchProps {
  readonly session: Session;
  readonly reading: Reading;
}

/** Where a reading is taken: on the pictures of this board's sheet, and in words. */
export function WhereToTouch({ session, reading }: WhereToTouchProps): JSX.Element | null {
  const { board } = session;
  const points = board === null ? [] : pointsOf(board, reading);
  if (board === null || points.length === 0)
    return <TouchPoints points={reading.points} tools={reading.with} />;
  const pictures = placesOf(board, reading);
  return (
    <>
      <TouchPoints points={points.map(({ is }) => is)} tools={reading.with} marked />
      {pictures.length > 0 && (
        <section class="pictures" aria-label="Where to touch">
          {pictures.map((places) => (
            <OnPicture key={places.picture.id} places={places} />
          ))}
        </section>
      )}
    </>
  );
}

function OnPicture({ places: { picture, touch, near } }: { readonly places: PlacesOnPicture }): JSX.Element {
  const spots = [
    ...near.map(({ mark, point }) => ({ mark, x: point.x, y: point.y, kind: 'near' as const })),
    ...touch.map(({ mark, point }) => ({ mark, x: point.x, y: point.y, kind: 'touch' as const })),
  ];
  return (
    <BoardPicture
      url={picture.url}
      says={`${picture.is}, with a ring at ${touch.map(({ point }) => point.is).join(' and ')}`}
      spots={spots}
    >
      <p>
        {picture.is}
        {picture.mirrored && <strong> Left and right are swapped</strong>}
      </p>
      {near.length > 0 && (
        <p>
          Close by:{' '}
          {near.map(({ mark, point }, index) => (
            <span key={mark}>
              {index > 0 && '; '}
              <b>{mark}</b> {point.is}
            </span>
          ))}
        </p>
      )}
    </BoardPicture>
  );
}
