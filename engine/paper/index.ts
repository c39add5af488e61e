export { type PaperOptions, paperOf } from './paper-of.ts';
