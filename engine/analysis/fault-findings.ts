import type { WrongEnd } from '../diagnostics/analysis-facts.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { LinkedTree } from '../link/linked-tree.ts';
import type { Span } from '../model/span.ts';
import type { Paths } from '../paths/paths.ts';
import type { Astray, FaultWalk } from './fault-walk.ts';

interface Home {
  readonly section: string;
  readonly span: Span;
}

/** Faults that are never found, or not always. A walk that ends at a check without an outcome for it is left to the rules: they
 *  tell it once, where it has to be mended. */
export function faultFindings(
  tree: LinkedTree,
  paths: Paths,
  walks: readonly FaultWalk[],
): readonly Diagnostic[] {
  const titles = new Map(tree.sections.map(({ section }) => [section.id, section.title]));
  const titleOf = (id: string): string => titles.get(id) ?? id;
  const homes = homesOf(tree);
  return walks.flatMap((walk): readonly Diagnostic[] => {
    const home = homes.get(walk.fault);
    const worst = walk.astray.find(({ how }) => how !== 'nowhere');
    if (home === undefined) return [];
    const span = tree.facts.foreign.faults.has(walk.fault) ? home.span : tree.placeOf('faults', walk.fault);
    const { fault, arrives } = walk;
    if (!paths.reached.has(home.section))
      return [{ code: 'fault-unreached', fault, title: titleOf(home.section), span, related: home.span }];
    if (worst === undefined) return [];
    const path = worst.path.map(titleOf);
    const misled = { fault, end: endOf(worst, titleOf), parted: titleOf(worst.parted), by: worst.by, path };
    const parting = tree.sections.find(({ section }) => section.id === worst.parted)?.titleSpan;
    const places = { span, ...(parting && { related: parting }) };
    if (arrives === 0 && walk.notFollowed === 0) return [{ code: 'fault-misled', ...misled, ...places }];
    return [{ code: 'fault-partly-found', share: percent(arrives), ...misled, ...places }];
  });
}

/** The section of each fault, and the place where it names it. */
function homesOf({ sections }: LinkedTree): ReadonlyMap<string, Home> {
  return new Map(
    sections.flatMap(({ section, faultSpans, leadSpan }) =>
      section.kind === 'fault'
        ? section.remedies.map(
            ({ fault }, at) => [fault, { section: section.id, span: faultSpans[at] ?? leadSpan }] as const,
          )
        : [],
    ),
  );
}

/** Never rounded to what it is not quite. */
const percent = (share: number): number => Math.min(99, Math.max(share > 0 ? 1 : 0, Math.round(share * 100)));

function endOf({ how, path, held }: Astray, titleOf: (id: string) => string): WrongEnd {
  const last = path.at(-1) ?? '';
  const at = titleOf(last);
  if (how === 'round') return { how, loop: path.slice(path.indexOf(last)).map(titleOf) };
  if (held?.kind === 'only-if') return { how: 'only-if', at, reading: held.reading, band: held.band };
  if (held?.kind === 'when')
    return { how: 'when', at, reading: held.reading, condition: held.condition, value: held.value };
  return { how: how === 'held' ? 'nowhere' : how, at };
}
