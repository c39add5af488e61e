export { localIso } from './local-iso.ts';
export { type Audience, outcomeWords, recordMarkdown } from './record-markdown.ts';
export { openWorkOf, recordOf } from './record-of.ts';
export { suspectLines } from './suspect-lines.ts';
