import { createRankServer, type RankJob } from '../models/rank-server.ts';
import type { Ranker } from './ranker.ts';

/** In the same thread, a moment later. */
export const fakeRanker = (engine?: RankJob): Ranker => ({
  open({ reply, lost }) {
    let isOpen = true;
    const serve = createRankServer((said) => isOpen && reply(said), engine);
    return {
      ask: (request) =>
        queueMicrotask(() => {
          if (!isOpen) return;
          try {
            serve(request);
          } catch {
            lost();
          }
        }),
      close() {
        isOpen = false;
      },
    };
  },
});
