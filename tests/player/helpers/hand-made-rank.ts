import type { Proposals } from '../../../engine/next/proposal.ts';
import type { Session } from '../../../engine/run/index.ts';
import type { Suspect, Suspects } from '../../../engine/run/suspects-of.ts';

/** A suspect as a test writes it: `crystal`, `crystal clock_chip` for two at once, empty for none of the tree's. */
export type Made = readonly [faults: string, share: number, moves?: readonly MadeMove[]];
/** `cpu_clk none`, and the factor of the odds. */
type MadeMove = readonly [seen: string, factor: number, entry?: number];

/** Suspects with these shares, in the order given. */
export function madeSuspects(session: Session, made: readonly Made[], fits = true): Suspects {
  const ranked = made.map(([ids, share, moves = []]): Suspect => {
    const faults = ids
      .split(' ')
      .filter((id) => id !== '')
      .map((id) => {
        const fault = session.loaded.faults.get(id);
        if (fault === undefined) throw new Error(`expected a fault ${id}`);
        return fault;
      });
    return { faults, share, moves: moves.map(moveOf) };
  });
  const belief = {
    hypotheses: ranked.map(({ faults }) => ({ faults })),
    shares: ranked.map(({ share }) => share),
    predict: () => [],
  };
  return { ranked, fits, belief, sightings: [] };
}

const moveOf = ([seen, factor, entry]: MadeMove): Suspect['moves'][number] => {
  const [reading = '', ...bands] = seen.split(' ');
  return { reading, bands, logOdds: Math.log(factor), entry: entry ?? null };
};

interface MadeProposal {
  readonly reading: string;
  readonly section: string | null;
  readonly rate: number;
  readonly minutes?: number;
  readonly wait?: number;
  readonly changes?: Readonly<Record<string, string>>;
  readonly bands?: Proposals['ranked'][number]['bands'];
  readonly parts?: Proposals['ranked'][number]['parts'];
}

/** Proposals in the order given; nine minutes are left. */
export function madeProposals(session: Session, made: readonly MadeProposal[], exact = true): Proposals {
  const ranked = made.map(
    ({ reading: id, section, rate, minutes = 2, wait = 0, changes = {}, bands = [], parts = [] }) => {
      const reading = session.loaded.readings.get(id);
      if (reading === undefined) throw new Error(`expected a reading ${id}`);
      const check = { reading, section, minutes, wait, changes, wants: changes };
      return { check, bits: rate * minutes, rate, bands, parts };
    },
  );
  return { ranked, minutesLeft: 9.2, exact };
}
