import type { JSX } from 'preact';
import { printQuantity } from '../../../../engine/quantity/index.ts';
import { asShown } from '../../../parts/as-shown.ts';
import { BoardPicture } from '../../../parts/board-picture.tsx';
import { Dialog } from '../../../parts/dialog.tsx';
import type { SheetProps } from './sheet-props.ts';

/** The whole board, and what its sheet says besides limits and jumpers. */
export function BoardSheet({ session, onClose }: SheetProps<'board'>): JSX.Element | null {
  const { board, loaded } = session;
  if (board === null) return null;
  const nameOf = (reading: string) => loaded.readings.get(reading)?.is ?? reading;
  return (
    <Dialog title={board.title} onClose={onClose}>
      <div class="sheet-form">
        {board.pictures.map(({ id, is, url }) => (
          <BoardPicture key={id} url={url} says={is} spots={[]} whole>
            {is}
          </BoardPicture>
        ))}
        {board.fittings.map(({ id, is, together }) => (
          <section key={id}>
            <h3>{is}</h3>
            <p>Fill {together.map((group) => group.join(' and ')).join(', or ')}.</p>
          </section>
        ))}
        {board.references.length > 0 && (
          <section>
            <h3>Read on a known-good board</h3>
            <dl class="facts">
              {board.references.map(({ reading, value, date, instrument }, index) => (
                <div key={index}>
                  <dt>
                    {nameOf(reading)}
                    <small class="facts-more">
                      {date}, {instrument}
                    </small>
                  </dt>
                  <dd>{asShown(printQuantity(value))}</dd>
                </div>
              ))}
            </dl>
          </section>
        )}
        {loaded.boardMisfits.length > 0 && (
          <section>
            <h3>What this tree cannot use of the sheet</h3>
            <ul class="plain-list">
              {loaded.boardMisfits.map((misfit) => (
                <li key={misfit}>{misfit}.</li>
              ))}
            </ul>
          </section>
        )}
      </div>
    </Dialog>
  );
}
