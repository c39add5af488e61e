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
    return countingWords(session, words).flatMap((chain) =>
      chain.map((word, at) => ({
        at: reading.from === null ? word.entry : word.entry + 0.5,
        sighting: {
          reading: reading.id,
          bands: weightsOf(word, chain.slice(0, at)),
          board: word.board,
          alsoPresent: mendedSince(session, word),
          entry: word.entry,
        },
      })),
    );
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
function countingWords(session: Session, words: readonly Known[]): readonly (readonly Known[])[] {
  const counting = new Map<string, readonly Known[]>();
  for (const word of words) {
    const state = [word.board, ...mendedSince(session, word)].join('\n');
    const entry = session.effective[word.entry];
    const isAgain = entry?.kind === 'retaken' && entry.observation.reading === word.reading;
    counting.set(state, isAgain ? [...(counting.get(state) ?? []), word] : [word]);
  }
  return [...counting.values()];
}

/** How well each band goes with an observation. Where the instrument leaves it in doubt, the part of what is possible in each
 *  band, whatever the decision rule makes of it. */
function weightsOf({ bands, observation }: Known, before: readonly Known[]): readonly Share[] {
  const count = countOf(observation);
  if (count !== null)
    return countWeights(
      count,
      before.flatMap((word) => countOf(word.observation) ?? []),
    );
  const inDoubt = observation?.doubt?.shares.filter(({ share }) => share > 0) ?? [];
  return inDoubt.length > 1 ? inDoubt : alike(bands);
}

const countOf = (observation: Observation | null): Count | null =>
  observation?.understood.kind === 'tries' ? observation.understood : null;

const alike = (bands: readonly string[]): readonly Share[] => bands.map((band) => ({ band, share: 1 }));

interface Count {
  readonly good: number;
  readonly of: number;
}

/**
 * How likely a count is where something never works, always does, or works now and then with a rate that no one knows: none is likelier
 * than another at first, and what was counted before tells more of it (Laplace's rule of succession).
 *
 *      P(next one good | k of n were good) = (k + 1) / (n + 2)          so 10 of 10: 1/2 · 2/3 · … · 10/11 = 1/11
 */
function countWeights({ good, of }: Count, before: readonly Count[]): readonly Share[] {
  const never = good === 0 ? 1 : 0;
  const always = good === of ? 1 : 0;
  if (never + always === 0) return [{ band: 'sometimes', share: 1 }];
  const goodBefore = before.reduce((sum, count) => sum + count.good, 0);
  const all = before.reduce((sum, count) => sum + count.of, 0);
  const alikeBefore = good > 0 ? goodBefore : all - goodBefore;
  let sometimes = 1;
  for (let at = 0; at < of; at++) sometimes *= (alikeBefore + at + 1) / (all + at + 2);
  return [
    { band: 'never', share: never },
    { band: 'sometimes', share: sometimes },
    { band: 'always', share: always },
  ].filter(({ share }) => share > 0);
}
