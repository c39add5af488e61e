import type { Section } from '../model/section.ts';
import type { ProseSyntax } from '../read/section-syntax.ts';
import { fillBlocks } from './fill-values.ts';
import type { Values } from './resolve-values.ts';

/** Hazards and prose with their code spans turned into what they stand for. */
export const fillProse = (
  { hazards, blocks }: ProseSyntax,
  values: Values,
): Pick<Section, 'hazards' | 'blocks'> => ({
  hazards: hazards.map((hazard) => {
    const filled = fillBlocks(hazard.blocks, values);
    return filled === hazard.blocks ? hazard : { ...hazard, blocks: filled };
  }),
  blocks: fillBlocks(blocks, values),
});
