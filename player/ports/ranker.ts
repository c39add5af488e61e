import type { RankReply, RankRequest } from '../models/rank-server.ts';

/** Something that weighs readings beside the screen, so that neither holds the other up. */
export interface Ranker {
  /** `lost` is called where it cannot be fetched, or fails. */
  open(hear: { reply(said: RankReply): void; lost(): void }): RankLine;
}

export interface RankLine {
  ask(request: RankRequest): void;
  /** Whatever it is at, it gives up. */
  close(): void;
}
