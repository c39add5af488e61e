import { shownBands } from '../suspects/shown-bands.ts';
import type { Rule } from './rule.ts';

/** The symptom is evidence: a fault of the tree that cannot show it has no place there. */
export const symptomNotShown: Rule = ({ facts, placeOf }) => {
  if (facts.given.length === 0) return [];
  const given = facts.readings.filter(({ id }) => facts.given.some(({ reading }) => reading === id));
  return facts.faults.flatMap((fault) => {
    const shown = shownBands(facts, fault, given);
    return facts.given
      .filter(({ reading, band }) => {
        const shares = shown.get(reading)?.shares;
        return shares !== undefined && !shares.some((share) => share.band === band && share.share > 0);
      })
      .map(({ reading, band }) => ({
        code: 'symptom-not-shown' as const,
        fault: fault.id,
        reading,
        band,
        span: placeOf('faults', fault.id),
      }));
  });
};
