export { openWorkOf, recordOf } from './record-of.ts';
export { type Audience, outcomeWords, recordMarkdown } from './record-markdown.ts';
