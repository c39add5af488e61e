import type { Part } from '../parts.ts';
import type { ProseSyntax } from '../section-syntax.ts';

/** All hazards and all prose of some parts, in their order. */
export const proseOf = (parts: readonly Part[]): ProseSyntax => ({
  hazards: parts.flatMap((part) => (part.kind === 'hazard' ? [part.hazard] : [])),
  blocks: parts.flatMap((part) => (part.kind === 'prose' ? [part.block] : [])),
});
