import type { FaultSection } from '../model/section.ts';
import { plainText } from '../prose/plain-text.ts';
import { type FaultStanding, faultStandings } from './fault-standings.ts';
import type { Session } from './session.ts';

/** A fault section that what was touched last may have to do with. */
export interface TouchedSuspect {
  readonly section: FaultSection;
  /** Its faults, those still possible first. */
  readonly faults: readonly FaultStanding[];
  /** Words of what was touched that the section or its faults speak of. */
  readonly mentioned: readonly string[];
}

/** The fault sections that speak of what was touched: those with a fault still possible first, then by how much they
 *  share with it. Where none speaks of it, every section with a fault still possible. */
export function suspectsFor(session: Session, touched: string): readonly TouchedSuspect[] {
  const standings = new Map(faultStandings(session).map((one) => [one.fault.id, one]));
  const words = wordsIn(touched);
  const all = session.loaded.tree.sections
    .filter((section) => section.kind === 'fault')
    .map((section) => {
      const faults = section.remedies
        .flatMap(({ fault }) => standings.get(fault) ?? [])
        .toSorted((a, b) => Number(isOpen(b)) - Number(isOpen(a)) || b.fault.weight - a.fault.weight);
      const text = wordsIn(textOf(section, faults));
      return { section, faults, mentioned: words.filter((word) => text.some((own) => isAlike(own, word))) };
    });
  // A word that every section uses tells them apart no more.
  const share = (word: string): number => 1 / all.filter(({ mentioned }) => mentioned.includes(word)).length;
  const worth = ({ mentioned }: TouchedSuspect): number =>
    mentioned.reduce((sum, word) => sum + share(word), 0);
  const speaking = all.filter(({ mentioned }) => mentioned.length > 0);
  return (speaking.length > 0 ? speaking : all.filter(hasOpen)).toSorted(
    (a, b) => Number(hasOpen(b)) - Number(hasOpen(a)) || worth(b) - worth(a),
  );
}

const isOpen = ({ state }: FaultStanding): boolean => state === 'possible';
const hasOpen = ({ faults }: TouchedSuspect): boolean => faults.some(isOpen);

const joints = new Set([
  'the',
  'and',
  'was',
  'were',
  'has',
  'had',
  'with',
  'from',
  'into',
  'that',
  'this',
  'for',
]);

/** Words of three letters and more, small, without those that only join others. */
const wordsIn = (text: string): readonly string[] =>
  [...new Set(text.toLowerCase().match(/[\p{L}\p{N}]{3,}/gu) ?? [])].filter((word) => !joints.has(word));

/** The same word, or one with an ending. */
const isAlike = (a: string, b: string): boolean =>
  Math.abs(a.length - b.length) < 3 && (a.startsWith(b) || b.startsWith(a));

function textOf({ title, blocks, remedies }: FaultSection, faults: readonly FaultStanding[]): string {
  const prose = [blocks, ...remedies.map((remedy) => remedy.blocks)].map((each) => plainText(each, () => ''));
  const own = faults.flatMap(({ fault }) => [fault.is, fault.which ?? '', ...fault.parts]);
  return [title, ...prose, ...own].join('\n');
}
