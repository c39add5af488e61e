import type { CompiledTree } from '../../engine/model/compiled-tree.ts';

/** The same tree, going on in another one where it stopped before.
 *  @param stop the section that stops it */
export function handingOver(tree: CompiledTree, stop: string, other: string): CompiledTree {
  const text = JSON.stringify({ ...tree, digest: `${tree.digest}-to-${other}` })
    .replaceAll(`#tree.s-${stop}`, `#tree.t-${other}`)
    .replaceAll(`"s-${stop}":`, `"t-${other}":`)
    .replaceAll(`"${stop}"`, `"to:${other}"`);
  const changed: CompiledTree = JSON.parse(text);
  const sections = changed.sections.map((section) =>
    section.kind === 'stop' && section.id === `to:${other}`
      ? {
          kind: 'hand-over' as const,
          id: section.id,
          title: section.title,
          hazards: [],
          blocks: [],
          tree: other,
        }
      : section,
  );
  return { ...changed, sections };
}
