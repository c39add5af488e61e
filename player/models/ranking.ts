import { batch, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Session } from '../../engine/run/index.ts';
import type { Ports } from '../ports/ports.ts';
import type { RankLine } from '../ports/ranker.ts';
import type { MoveLines } from './move-lines.ts';
import type { ProposalShown } from './proposal-shown.ts';
import type { RankReply } from './rank-server.ts';
import type { SuspectLines } from './suspect-lines.ts';

/** The suspects of one job, and the check that is quicker than the tree's own. */
export interface Ranking {
  /** Those of the entry before stay until the present ones are worked out. Null before the first. */
  readonly suspects: ReadonlySignal<SuspectLines | null>;
  /** Null while it is not worked out, and where nothing is quicker. */
  readonly proposal: ReadonlySignal<ProposalShown | null>;
  /** What ranks could not be fetched, or failed: the next entry tries again. */
  readonly failed: ReadonlySignal<boolean>;
  /** What moved a suspect; null where the job went on before that was worked out. */
  moves(suspect: string): Promise<MoveLines | null>;
  dispose(): void;
}

interface Waiting {
  readonly suspect: string;
  readonly resolve: (moves: MoveLines | null) => void;
}

/** Has every entry ranked beside the screen, once the step that it leads to is drawn. */
export function createRanking(
  session: ReadonlySignal<Session | null>,
  { clock, ranker }: Pick<Ports, 'clock' | 'ranker'>,
): Ranking {
  const suspects = signal<SuspectLines | null>(null);
  const proposal = signal<ProposalShown | null>(null);
  const failed = signal(false);
  let turn = 0;
  /** The turn that is being worked on. */
  let busy: number | null = null;
  let line: RankLine | null = null;
  /** What the line knows the job by. */
  let known: Pick<Session, 'firstTree' | 'laterTrees'> | null = null;
  let waiting: readonly Waiting[] = [];

  const hangUp = () => {
    line?.close();
    [line, known, busy] = [null, null, null];
    for (const { resolve } of waiting) resolve(null);
    waiting = [];
  };

  const hear = (said: RankReply) => {
    if (said.tell === 'moves') {
      const [mine, others] = [true, false].map((is) =>
        waiting.filter(({ suspect }) => (suspect === said.suspect) === is),
      );
      waiting = others ?? [];
      for (const { resolve } of mine ?? []) resolve(said.moves);
      return;
    }
    if (said.tell === 'proposal' && said.turn === busy) busy = null;
    if (said.turn !== turn) return;
    batch(() => {
      failed.value = false;
      if (said.tell === 'suspects') suspects.value = said.suspects;
      else proposal.value = said.proposal;
    });
  };

  const lost = () => {
    hangUp();
    failed.value = true;
  };

  const rank = (now: Session) => {
    // What was not done with the entry before would only delay this one.
    if (busy !== null) hangUp();
    line ??= ranker.open({ reply: hear, lost });
    const { firstTree, laterTrees, board, entries } = now;
    const isKnown = known?.firstTree === firstTree && known.laterTrees === laterTrees;
    [known, busy] = [now, turn];
    line.ask({
      ask: 'rank',
      turn,
      job: isKnown ? null : { tree: firstTree, laterTrees, board },
      entries,
    });
  };

  const stop = effect(() => {
    const now = session.value;
    turn += 1;
    proposal.value = null;
    if (now === null || !isRanked(now)) {
      suspects.value = null;
      return;
    }
    const mine = turn;
    clock.idle(() => mine === turn && rank(now));
  });

  return {
    suspects,
    proposal,
    failed,
    moves: (suspect) =>
      new Promise((resolve) => {
        if (line === null) return resolve(null);
        waiting = [...waiting, { suspect, resolve }];
        line.ask({ ask: 'moves', turn, suspect });
      }),
    dispose() {
      stop();
      turn += 1;
      hangUp();
    },
  };
}

const isRanked = ({ opened, closed, loaded }: Session): boolean =>
  opened && closed === null && loaded.tree.faults.length > 0;
