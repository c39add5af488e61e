import { sharesOf } from '../doubt/index.ts';
import type { DecisionRule } from '../model/instrument.ts';
import type { Doubt, Observation, Understood } from '../model/observation.ts';
import type { Present } from '../model/present.ts';
import type { Reading } from '../model/reading.ts';
import type { ResolvedScale } from '../model/resolved-scale.ts';
import { fromStored, tidy } from '../quantity/index.ts';
import { groupDoubt } from './group-doubt.ts';
import { judge } from './judge.ts';
import { withDoubt } from './judge-one.ts';
import { memberReading } from './member-reading.ts';
import { resolveScale } from './resolve-scale.ts';
import { usedLimits } from './used-limits.ts';

/** The same look at a reading, judged at other settings or by another rule. The instrument's width stays as it was.
 *  Derived readings are not judged again but derived again. */
export function judgeAgain(
  reading: Reading,
  present: Present,
  observation: Observation,
  rule: DecisionRule = 'guarded',
): Observation {
  const { understood, doubt: before } = observation;
  const one = memberReading(reading);
  const resolved = resolveScale(one, present);
  const used = usedLimits(resolved);
  const again = (value: Understood) =>
    withDoubt(resolved, judge(one, resolved, value), doubtAgain(resolved, value, before), rule);
  if (understood.kind !== 'each') {
    const judged = again(understood);
    const none = /^none$/i.test(tidy(observation.typed)) && judged.bands.includes('none');
    return { ...observation, ...(none ? { bands: ['none'] } : judged), used };
  }
  // The entry keeps one width for the whole; each member that is a value has at most that.
  const members = understood.members.map((member) => ({ ...member, ...again(member.understood) }));
  const row = { ...understood, members: members.map(({ doubt: _, ...member }) => member) };
  return {
    ...observation,
    understood: row,
    bands: judge(reading, resolved, row),
    doubt: groupDoubt(reading, members),
    used,
  };
}

function doubtAgain(resolved: ResolvedScale, understood: Understood, before: Doubt | null): Doubt | null {
  if (understood.kind !== 'quantity' || before === null || resolved.contradiction !== null) return null;
  const shares = sharesOf(resolved, fromStored(understood.quantity), fromStored(before.plusMinus));
  return { ...before, shares };
}
