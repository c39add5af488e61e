import type { Ranker } from './ranker.ts';

/** In a thread of its own. */
export const workerRanker: Ranker = {
  open({ reply, lost }) {
    const worker = new Worker(new URL('./rank-worker.ts', import.meta.url), { type: 'module' });
    worker.onmessage = ({ data }) => reply(data);
    worker.onerror = lost;
    return {
      ask: (request) => worker.postMessage(request),
      close: () => worker.terminate(),
    };
  },
};
