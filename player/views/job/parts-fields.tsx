import type { Signal } from '@preact/signals';
import type { JSX } from 'preact';
import { TextField } from '../../parts/text-field.tsx';

interface PartLine {
  readonly what: string;
  readonly cost: string;
}

interface PartsFieldsProps {
  /** What to note of the place: `which capacitor`. */
  readonly asks: string | null;
  readonly which: Signal<string>;
  readonly lines: Signal<readonly PartLine[]>;
}

/** Where the fault was, and every part that went in with what it cost. */
export function PartsFields({ asks, which, lines }: PartsFieldsProps): JSX.Element {
  const change = (at: number, next: Partial<PartLine>) => {
    lines.value = lines.value.map((line, index) => (index === at ? { ...line, ...next } : line));
  };
  return (
    <div class="parts-fields">
      <TextField
        label={asks === null ? 'Which one' : `${asks.charAt(0).toUpperCase()}${asks.slice(1)}`}
        {...(asks === null && { hint: 'pin, slot or part' })}
        value={which.value}
        onType={(text) => (which.value = text)}
      />
      {lines.value.map((line, index) => (
        <div class="part-line" key={index}>
          <TextField label="Part" value={line.what} onType={(what) => change(index, { what })} />
          <TextField
            label="Cost, with currency"
            value={line.cost}
            onType={(cost) => change(index, { cost })}
          />
        </div>
      ))}
      <button
        type="button"
        class="action action-quiet"
        onClick={() => (lines.value = [...lines.value, { what: '', cost: '' }])}
      >
        Add a part
      </button>
    </div>
  );
}
