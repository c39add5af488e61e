import type { JSX } from 'preact';
import type { Instrument } from '../../../engine/model/instrument.ts';
import { rangeWords } from '../../models/instrument-words.ts';
import { asShown } from '../../parts/as-shown.ts';

/** How the line of one instrument is understood. */
export function InstrumentUnderstood({ instrument }: { readonly instrument: Instrument }): JSX.Element {
  return (
    <>
      <b>{instrument.name}</b>, a {instrument.tool}
      <span class="instrument-ranges">
        {rangeWords(instrument).map(({ upTo, plusMinus }, index) => (
          <span key={index}>
            up to {asShown(upTo)}: {asShown(plusMinus)} at most
          </span>
        ))}
      </span>
    </>
  );
}
