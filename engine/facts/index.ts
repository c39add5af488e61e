export { readFacts } from './read-facts.ts';
export { readProcedureFacts } from './read-procedure-facts.ts';
export { readSharedFacts } from './read-shared-facts.ts';
export { standIns } from './stand-ins.ts';
