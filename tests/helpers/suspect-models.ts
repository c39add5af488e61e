import type { BoardState } from '../../engine/model/entry.ts';
import type { Fault, Share } from '../../engine/model/fault.ts';
import type { Odds } from '../../engine/model/odds.ts';
import type { Need, Reading } from '../../engine/model/reading.ts';
import { bandsOf } from '../../engine/scale/index.ts';
import type { BeliefTree } from '../../engine/suspects/believe.ts';
import type { Sighting } from '../../engine/suspects/sighting.ts';
import { healthy } from '../../engine/suspects/unlisted-fault.ts';
import type { Dice } from './dice.ts';
import { plainReading } from './plain-reading.ts';

/** A reading in short: bands, `*` before the normal ones; with none marked nothing is judged. */
export function readingOf(id: string, bands: string, more: Partial<Reading> = {}): Reading {
  const names = bands.split(' ');
  const options = names.map((name) => ({ name: name.replace('*', ''), means: null }));
  const normal = names.filter((name) => name.startsWith('*')).map((name) => name.slice(1));
  return { ...plainReading(id, { kind: 'options', options }, normal.length > 0 ? normal : 'any'), ...more };
}

/** A fault in short: `low` or `low 0.7, none 0.3` for each reading. */
export function faultOf(
  id: string,
  shows: Readonly<Record<string, string>>,
  more: Partial<Fault> = {},
): Fault {
  return {
    ...healthy,
    id,
    is: id,
    weight: 1,
    shows: Object.entries(shows).map(([reading, text]) => ({
      reading,
      shares: text.split(', ').map((part) => {
        const [band = '', share = '1'] = part.split(' ');
        return { band, share: Number(share) };
      }),
    })),
    ...more,
  };
}

/** A sighting in short: `low`, or `low 0.3, good 0.7`. */
export function sightingOf(reading: string, bands: string, more: Partial<Sighting> = {}): Sighting {
  const shares = bands.split(', ').map((part): Share => {
    const [band = '', share = '1'] = part.split(' ');
    return { band, share: Number(share) };
  });
  return { reading, bands: shares, board: 'failing', alsoPresent: [], entry: null, ...more };
}

/** What a random tree may have besides faults that show readings in shares. */
export interface Traits {
  /** Readings that are like others, or hidden behind them. */
  readonly linked: boolean;
  readonly restUnknown: boolean;
  readonly sometimes: boolean;
}

export const plainTraits: Traits = { linked: false, restUnknown: false, sometimes: false };

export function randomBeliefTree(
  dice: Dice,
  sizes: { readonly readings: number; readonly faults: number },
  traits: Traits = plainTraits,
): BeliefTree & { readonly odds: Odds } {
  const readings: Reading[] = [];
  for (let at = 0; at < sizes.readings; at++) readings.push(randomReading(dice, `r${at}`, readings, traits));
  const faults = Array.from({ length: sizes.faults }, (_, at) =>
    randomFault(dice, `f${at}`, readings, traits),
  );
  return { readings, faults, odds: randomOdds(dice) };
}

const part = (dice: Dice): number => (1 + dice.upTo(99)) / 100;

const randomOdds = (dice: Dice): Odds => ({
  slip: (1 + dice.upTo(20)) / 100,
  unlisted: (1 + dice.upTo(20)) / 100,
  unlistedNormal: part(dice),
});

function randomReading(dice: Dice, id: string, before: readonly Reading[], { linked }: Traits): Reading {
  const like = linked && before.length > 0 && dice.chance(0.3) ? before[dice.upTo(before.length)] : undefined;
  if (like !== undefined) return { ...like, id, like: like.id };
  const names = ['a', 'b', 'c', 'd'].slice(0, 2 + dice.upTo(3));
  const normal = dice.chance(0.15) ? [] : dice.some(names);
  const bands = names.map((name) => (normal.includes(name) ? `*${name}` : name)).join(' ');
  const needed = linked ? before.filter(({ normal: judged }) => judged !== 'any' && dice.chance(0.4)) : [];
  const needs = needed.map((one): Need => ({ reading: one.id, bands: normalOf(one) }));
  const hidden = needs.length > 0 && dice.chance(0.7) ? (names[dice.upTo(names.length)] ?? null) : null;
  return readingOf(id, bands, { needs, hidden });
}

const normalOf = ({ normal }: Reading): readonly string[] => (normal === 'any' ? [] : normal);

function randomFault(dice: Dice, id: string, readings: readonly Reading[], traits: Traits): Fault {
  const shown = readings.filter(() => dice.chance(0.6));
  return {
    ...healthy,
    id,
    is: id,
    weight: part(dice),
    shows: shown.map((reading) => ({ reading: reading.id, shares: randomShares(dice, bandsOf(reading)) })),
    rest: traits.restUnknown && dice.chance(0.3) ? 'unknown' : 'normal',
    comes: traits.sometimes && dice.chance(0.3) ? 'sometimes' : 'always',
  };
}

/** Of some of the bands; they add up to 1. */
export function randomShares(dice: Dice, bands: readonly string[]): readonly Share[] {
  const rows = dice.some(bands).map((band) => ({ band, share: part(dice) }));
  const sum = rows.reduce((total, { share }) => total + share, 0);
  return rows.map(({ band, share }) => ({ band, share: share / sum }));
}

/** Every reading at most `times` times, clear or in doubt, in any order. */
export function randomSightings(
  dice: Dice,
  { readings, faults }: BeliefTree,
  times: number,
  more: { readonly running?: boolean; readonly mended?: boolean } = {},
): readonly Sighting[] {
  return Array.from({ length: times }, (): Sighting => {
    const reading = readings[dice.upTo(readings.length)];
    const bands = reading === undefined ? [] : bandsOf(reading);
    const clear = { band: bands[dice.upTo(bands.length)] ?? '', share: 1 };
    const board: BoardState = more.running === true && dice.chance(0.3) ? 'running' : 'failing';
    const mended = more.mended === true && dice.chance(0.4) ? faults.slice(0, 1) : [];
    return {
      reading: reading?.id ?? '',
      bands: dice.chance(0.2) ? randomShares(dice, bands) : [clear],
      board,
      alsoPresent: mended.map(({ id }) => id),
      entry: null,
    };
  });
}
