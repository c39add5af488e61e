import { createRankServer, type RankRequest } from '../models/rank-server.ts';

const serve = createRankServer((said) => globalThis.postMessage(said));

globalThis.onmessage = ({ data }: MessageEvent<RankRequest>) => serve(data);
