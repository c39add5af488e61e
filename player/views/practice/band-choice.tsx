import type { JSX } from 'preact';
import type { Reading } from '../../../engine/model/reading.ts';
import { bandsOf } from '../../../engine/scale/index.ts';
import { bandsInWords } from '../../models/band-words.ts';
import { OptionsFace } from '../../parts/options-face.tsx';
import { useKeys } from '../../parts/use-keys.ts';

interface BandChoiceProps {
  readonly title: string;
  readonly reading: Reading;
  readonly chosen: string | null;
  readonly onChoose: (band: string) => void;
}

/** The bands of a reading, to say one of them. */
export function BandChoice({ title, reading, chosen, onChoose }: BandChoiceProps): JSX.Element {
  const bands = bandsOf(reading);
  const words = bandsInWords(reading, bands);
  const means = reading.measure.kind === 'options' ? reading.measure.options.map((one) => one.means) : [];
  useKeys(
    Object.fromEntries(bands.slice(0, 9).map((band, index) => [String(index + 1), () => onChoose(band)])),
  );
  return (
    <section class="band-choice" aria-label={title}>
      <p class="engraved">{title}</p>
      <OptionsFace
        options={words.map((name, index) => ({ name, means: means[index] ?? null }))}
        normal={reading.normal === 'any' ? 'any' : bandsInWords(reading, reading.normal)}
        chosen={chosen === null ? [] : bandsInWords(reading, [chosen])}
        digits
        onChoose={(name) => onChoose(bands[words.indexOf(name)] ?? name)}
      />
    </section>
  );
}
