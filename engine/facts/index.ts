export { readFacts } from './read-facts.ts';
