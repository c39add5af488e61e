import type { Block, Hazard } from '../model/prose.ts';
import type { ProseSyntax } from '../read/section-syntax.ts';
import { fillBlocks } from './fill-values.ts';
import type { Values } from './resolve-values.ts';

/** Hazards and prose with their code spans turned into what they stand for. */
export const fillProse = (
  { hazards, blocks }: ProseSyntax,
  values: Values,
): { readonly hazards: readonly Hazard[]; readonly blocks: readonly Block[] } => ({
  hazards:
    values.size === 0
      ? hazards
      : hazards.map((hazard) => ({ ...hazard, blocks: fillBlocks(hazard.blocks, values) })),
  blocks: fillBlocks(blocks, values),
});
