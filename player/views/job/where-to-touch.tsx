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
  return (
    <section class="where" aria-label="Where to touch">
      <TouchPoints points={points.map(({ is }) => is)} tools={reading.with} marked />
      {placesOf(board, reading).map((places) => (
        <OnPicture key={places.picture.id} places={places} />
      ))}
    </section>
  );
}

function OnPicture({ places: { picture, touch, near } }: { readonly places: PlacesOnPicture }): JSX.Element {
  const spots = [
    ...near.map(({ mark, point }) => ({ mark, x: point.x, y: point.y, kind: 'near' as const })),
    ...touch.map(({ mark, point }) => ({ mark, x: point.x, y: point.y, kind: 'touch' as const })),
  ];
  return (
    <figure>
      <BoardPicture
        url={picture.url}
        says={`${picture.is}, with a ring at ${touch.map(({ point }) => point.is).join(' and ')}`}
        spots={spots}
      />
      <figcaption class="picture-says">
        <span class="picture-side">
          {picture.is}
          {picture.mirrored && <strong> Turned over: left and right are swapped</strong>}
        </span>
        {near.length > 0 && (
          <span>
            Close by:{' '}
            {near.map(({ mark, point }, index) => (
              <span key={mark} class="picture-near-name">
                {index > 0 && '; '}
                <b>{mark}</b> {point.is}
              </span>
            ))}
          </span>
        )}
      </figcaption>
    </figure>
  );
}
