export { scxmlOf } from './scxml-of.ts';
