import type { Member } from '../model/observation.ts';
import type { Reading } from '../model/reading.ts';
import { groupShares } from './group-shares.ts';

/** The bands that the whole of many alike can be in, where each member can be in several. */
export const groupBands = (reading: Reading, members: readonly Pick<Member, 'bands'>[]): readonly string[] =>
  groupShares(
    reading,
    members.map(({ bands }) => bands.map((band) => ({ band, share: 1 / bands.length }))),
  ).map(({ band }) => band);
