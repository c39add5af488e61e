export type { Arranging, Conditions } from './arranging.ts';
export { arrangingOf } from './arranging-of.ts';
export type { Check } from './check.ts';
export type { Before, Later } from './later.ts';
export type { Proposal, Proposals } from './proposal.ts';
export { type ProposeOptions, propose } from './propose.ts';
export { settled } from './settled.ts';
