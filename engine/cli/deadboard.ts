#!/usr/bin/env node
import { main } from './main.ts';
import { nodeBench } from './node-bench.ts';

const bench = nodeBench();
process.exitCode = await main(process.argv.slice(2), bench);
bench.close();
