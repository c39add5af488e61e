import type { Path } from '../model/front-matter.ts';
import type { Measure, Reading, SingleMeasure } from '../model/reading.ts';
import { bandsOf, eachBands } from '../scale/index.ts';
import type { FactsContext } from './facts-context.ts';
import { readNames } from './read-names.ts';

/** A typed row has to be seen at a glance. */
const size = { least: 2, most: 64 } as const;
/** Every choice of bands out of normal is a band of the whole: 4 give 11 choices of two or more, 5 would give 26. */
const mostWrong = 4;

/** The names of many alike. */
export function readMembers(raw: unknown, path: Path, context: FactsContext): readonly string[] {
  const members = readNames(raw, 'member', path, context);
  const count = members.length;
  if (count > 0 && (count < size.least || count > size.most)) {
    context.atValue(path, { code: 'each-size', count, ...size });
  }
  return members;
}

/** Many alike as one measure, of what one of them can show. */
export function manyAlike(
  members: readonly string[],
  of: SingleMeasure,
  normal: Reading['normal'],
  path: Path,
  context: FactsContext,
): Extract<Measure, { readonly kind: 'each' }> {
  const bands = bandsOf({ measure: of });
  for (const name of members.filter((member) => isBand(member, bands))) {
    context.atKey([...path, 'each'], { code: 'member-is-band', name });
  }
  if (normal === 'any') context.atKey([...path, 'normal'], { code: 'each-not-judged' });
  const sound = normal === 'any' ? bands.slice(0, 1) : normal;
  const wrong = bands.filter((band) => !sound.includes(band));
  if (wrong.length > mostWrong) {
    context.atKey([...path, 'each'], { code: 'each-bands', wrong, most: mostWrong });
  }
  // `all-normal` says that nobody is out of normal.
  if (wrong.includes('normal')) {
    context.atKey(path, { code: 'reserved-word', name: 'normal', of: 'band' });
  }
  const few = wrong.slice(0, mostWrong);
  const whole = eachBands(members.length, [...sound, ...few.filter((band) => band !== 'normal')], sound);
  return { kind: 'each', members, of, normal: sound, bands: whole };
}

const isBand = (member: string, bands: readonly string[]): boolean =>
  bands.some((band) => band.toLowerCase() === member.toLowerCase());
