import type { Fault } from '../model/fault.ts';
import type { Proposals } from '../next/index.ts';
import type { Session } from '../run/index.ts';
import { proposalsOf } from '../run/proposals-of.ts';
import { type Suspects, suspectsOf } from '../run/suspects-of.ts';

/** Who is less likely is only counted: after a proof that failed there are a thousand pairs. */
const least = 0.001;

/** What the board is suspected of and what is worth reading next, as plain data: the other half of what `walk --json` prints. */
export function weighedOf(session: Session) {
  const suspects = suspectsOf(session);
  const proposals = proposalsOf(session);
  return { suspects: suspectsIn(suspects), next: proposals && nextIn(proposals, suspects) };
}

function suspectsIn({ fits, ranked }: Suspects) {
  const named = ranked.filter(({ share }, at) => at === 0 || share >= least);
  const rest = ranked.slice(named.length);
  return {
    fits,
    ranked: named.map(({ faults, share, moves }) => ({
      faults: idsOf(faults),
      share,
      moves: moves.map(({ entry, ...move }) => ({ ...move, entry: entry === null ? null : entry + 1 })),
    })),
    others: { count: rest.length, share: rest.reduce((sum, { share }) => sum + share, 0) },
  };
}

const nextIn = ({ ranked, minutesLeft, exact }: Proposals, { belief }: Suspects) => ({
  minutesLeft,
  exact,
  ranked: ranked.map(({ check, bits, rate, bands, parts }) => ({
    reading: check.reading.id,
    section: check.section,
    minutes: check.minutes,
    wait: check.wait,
    changes: check.changes,
    bits,
    rate,
    bands,
    parts: parts.map(({ hypothesis, band }) => ({
      faults: idsOf(belief.hypotheses[hypothesis]?.faults ?? []),
      band,
    })),
  })),
});

const idsOf = (faults: readonly Fault[]): readonly string[] => faults.map(({ id }) => id);
