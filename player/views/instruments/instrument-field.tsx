import type { JSX } from 'preact';
import { useId, useRef } from 'preact/hooks';
import { parseInstrument } from '../../../engine/doubt/index.ts';
import type { EquipmentForm } from '../../models/equipment-form.ts';
import { Action } from '../../parts/action.tsx';
import { InstrumentUnderstood } from './instrument-understood.tsx';

const example = 'bench meter (meter): 6 V ± (0.5 % + 2) at 1 mV';

/** The line of one more instrument, with how it is understood while it is typed. */
export function InstrumentField({ form }: { readonly form: EquipmentForm }): JSX.Element {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const typed = form.typed.value;
  const read = typed.trim() === '' ? null : parseInstrument(typed);
  const type = (text: string) => {
    form.typed.value = text;
    field.current?.focus();
  };
  return (
    <form
      class="instrument-form words"
      onSubmit={(event) => {
        event.preventDefault();
        if (form.add()) field.current?.focus();
      }}
    >
      <label for={id}>One more instrument, as its leaflet says</label>
      <div class="instrument-row">
        <input
          id={id}
          ref={field}
          class="words-input instrument-input"
          type="text"
          autoComplete="off"
          autoCapitalize="off"
          spellcheck={false}
          placeholder={example}
          data-first=""
          value={typed}
          aria-invalid={read !== null && !read.ok}
          aria-describedby={`${id}-line`}
          onInput={(event) => (form.typed.value = event.currentTarget.value)}
        />
        <Action rank="main" submit disabled={read === null || !read.ok}>
          Add
        </Action>
      </div>
      <div id={`${id}-line`} class="instrument-understanding" role="status">
        {read === null && (
          <p class="hint">
            Name, the tool it is in brackets, then each range behind a colon: what it goes up to, ± (percent
            of the reading + digits), and what its last digit is worth. Ranges are parted by semicolons.
          </p>
        )}
        {read?.ok && (
          <p>
            <InstrumentUnderstood instrument={read.value} />
          </p>
        )}
        {read?.ok === false && (
          <>
            <p>
              <strong class="refused-mark">Not understood.</strong> {read.refusal.text}.
            </p>
            <p class="offers">
              {read.refusal.offers.map((offer) => (
                <button key={offer} type="button" class="offer" onClick={() => type(offer)}>
                  {offer}
                </button>
              ))}
            </p>
          </>
        )}
      </div>
    </form>
  );
}
