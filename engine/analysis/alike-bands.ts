import type { Share } from '../model/fault.ts';
import type { Walkable } from '../paths/walkable.ts';
import type { Alike } from '../suspects/draws.ts';
import { inputsOf } from '../suspects/inputs-of.ts';

/** Merges the bands of a reading that nothing on a walk tells apart, so that fewer ways need following. */
export function alikeBands(tree: Walkable): Alike {
  const markOf = bandMarks(tree);
  return (reading, shares) => (shares.length < 2 ? shares : merged(shares, (band) => markOf(reading, band)));
}

/** The same text for bands of a reading that nothing on a walk tells apart. */
export function bandMarks(tree: Walkable): (reading: string, band: string) => string {
  const told = toldApart(tree);
  const whole = new Set(
    tree.readings.flatMap((reading) =>
      reading.from === null ? [] : [reading.id, ...inputsOf(reading, tree)],
    ),
  );
  return (reading, band) =>
    whole.has(reading)
      ? band
      : (told.get(reading) ?? []).map((set) => (set.includes(band) ? '1' : '0')).join('');
}

function merged(shares: readonly Share[], markOf: (band: string) => string): readonly Share[] {
  const classes = new Map<string, { readonly band: string; share: number }>();
  for (const { band, share } of shares) {
    const mark = markOf(band);
    const known = classes.get(mark);
    if (known === undefined) classes.set(mark, { band, share });
    else known.share += share;
  }
  return [...classes.values()];
}

/** The sets of bands that something asks for, by reading; a reading that is like another is asked with it. */
function toldApart({
  sections,
  readings,
  faults,
  given,
}: Walkable): ReadonlyMap<string, readonly (readonly string[])[]> {
  const told = new Map<string, (readonly string[])[]>();
  const likes = new Map(readings.map(({ id, like }) => [id, like]));
  const ask = (id: string, bands: readonly string[]): void => {
    const seen = new Set<string>();
    for (let at: string | null | undefined = id; at != null && !seen.has(at); at = likes.get(at)) {
      seen.add(at);
      const list = told.get(at);
      if (list === undefined) told.set(at, [bands]);
      else list.push(bands);
    }
  };
  for (const { reading, band } of given) ask(reading, [band]);
  for (const { needs, onlyIf } of readings)
    for (const need of [...needs, ...onlyIf]) ask(need.reading, need.bands);
  for (const { onlyIf } of faults) for (const need of onlyIf) ask(need.reading, need.bands);
  for (const section of sections) {
    if (section.kind === 'task' || section.kind === 'fault')
      for (const need of section.onlyIf) ask(need.reading, need.bands);
    if (section.kind === 'call') for (const { end } of section.ends) ask(section.id, [end]);
    if (section.kind !== 'check') continue;
    for (const { condition } of section.outcomes) {
      if (condition.kind === 'bands')
        for (const [id, bands] of Object.entries(condition.bands)) ask(id, bands);
    }
  }
  return told;
}
