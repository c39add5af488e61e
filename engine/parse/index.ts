export { leavesOpen, openBlock } from './open-block.ts';
export { parseBody } from './parse-body.ts';
export { parseFrontMatter } from './parse-front-matter.ts';
export { parseEntry } from './yaml/parse-entry.ts';
