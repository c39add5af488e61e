import type { Share } from '../model/fault.ts';
import type { Observation } from '../model/observation.ts';
import type { Sighting } from '../suspects/sighting.ts';
import type { Known } from './known.ts';
import type { Session } from './session.ts';
import { wordsOn } from './words-on.ts';

/**
 * What was read in a job, as evidence, in the order it was read. The latest word on each reading counts, and those before it that it was
 * taken `again` beside; for each state of the board by itself, because what it showed before a remedy still speaks of the faults
 * that were there then. What was struck out, is stale, could not be read or was left entirely open is none, nor is what a board
 * shows whose last remedy waits for its proof or has passed it: that speaks against no fault.
 */
export function sightingsOf(session: Session): readonly Sighting[] {
  const { remedies } = session.position;
  const last = remedies.at(-1)?.effect;
  const isOpen = last === 'waits for proof' || last === 'mended';
  const sightings = session.loaded.tree.readings.flatMap((reading) => {
    const words = wordsOn(session, reading.id).filter(
      (word) => isTold(word) && !(isOpen && word.remedies >= remedies.length),
    );
    return countingWords(session, words).map((word) => ({
      at: reading.from === null ? word.entry : word.entry + 0.5,
      sighting: {
        reading: reading.id,
        bands: word.observation === null ? alike(word.bands) : weightsOf(word.observation),
        board: word.board,
        alsoPresent: mendedSince(session, word),
        entry: word.entry,
      },
    }));
  });
  return sightings.toSorted((a, b) => a.at - b.at).map(({ sighting }) => sighting);
}

const isTold = ({ stale, bands, cut }: Known): boolean =>
  !stale && bands.length > 0 && (bands.length < cut.length || cut.length === 1);

/** Faults that were on the board when a word was taken, and have been mended since. */
export function mendedSince(session: Session, { remedies }: Pick<Known, 'remedies'>): readonly string[] {
  const since = session.position.remedies.slice(remedies).filter(({ effect }) => effect === 'more is wrong');
  return [...new Set(since.map(({ fault }) => fault))].sort();
}

/** The last word, and those that it was taken again beside, for each state of the board. */
function countingWords(session: Session, words: readonly Known[]): readonly Known[] {
  const counting = new Map<string, readonly Known[]>();
  for (const word of words) {
    const state = [word.board, ...mendedSince(session, word)].join('\n');
    const entry = session.effective[word.entry];
    const isAgain = entry?.kind === 'retaken' && entry.observation.reading === word.reading;
    counting.set(state, isAgain ? [...(counting.get(state) ?? []), word] : [word]);
  }
  return [...counting.values()].flat();
}

/** How well each band goes with an observation. Where the instrument leaves it in doubt, the part of what is possible in each
 *  band, whatever the decision rule makes of it. */
function weightsOf({ understood, doubt, bands }: Observation): readonly Share[] {
  if (understood.kind === 'tries') return countWeights(understood.good, understood.of);
  const inDoubt = doubt?.shares.filter(({ share }) => share > 0) ?? [];
  return inDoubt.length > 1 ? inDoubt : alike(bands);
}

const alike = (bands: readonly string[]): readonly Share[] => bands.map((band) => ({ band, share: 1 }));

/** How likely a count is where something never works, always does, or works now and then, no rate being likelier than another:
 *  then each count from 0 to `of` is as likely as the others, ∫ C(n,k) p^k (1−p)^(n−k) dp = 1 / (n + 1). */
const countWeights = (good: number, of: number): readonly Share[] =>
  [
    { band: 'never', share: good === 0 ? 1 : 0 },
    { band: 'sometimes', share: 1 / (of + 1) },
    { band: 'always', share: good === of ? 1 : 0 },
  ].filter(({ share }) => share > 0);
