import type { CompiledTree } from '../model/compiled-tree.ts';
import type { CallSection, Section, TaskSection } from '../model/section.ts';

/** What leads into a section by the tree's own arrows. */
export type WayIn =
  /** The beginning of the tree, or a check: nothing has to be done before. */
  | { readonly kind: 'open'; readonly from: Section | null }
  | { readonly kind: 'task'; readonly from: TaskSection }
  /** An end of a procedure. */
  | { readonly kind: 'call'; readonly from: CallSection };

export type WaysIn = ReadonlyMap<string, readonly WayIn[]>;

const known = new WeakMap<CompiledTree, WaysIn>();

/** The ways into every section of a tree, by its id. They follow from the tree alone and are asked for at every step, so they
 *  are kept. */
export function waysIn(tree: CompiledTree): WaysIn {
  const before = known.get(tree);
  if (before !== undefined) return before;
  const sections = new Map(tree.sections.map((section) => [section.id, section]));
  const ways = new Map<string, WayIn[]>(tree.sections.map(({ id }) => [id, []]));
  const [first] = tree.sections;
  if (first !== undefined) ways.get(first.id)?.push({ kind: 'open', from: null });
  for (const section of tree.sections) {
    for (const target of targetsOf(section)) ways.get(target)?.push(wayFrom(section, target, sections));
  }
  known.set(tree, ways);
  return ways;
}

function targetsOf(section: Section): readonly string[] {
  if (section.kind === 'check') return section.outcomes.map(({ target }) => target);
  if (section.kind === 'task') return [section.target];
  return section.kind === 'call' ? [section.first] : [];
}

function wayFrom(section: Section, target: string, sections: ReadonlyMap<string, Section>): WayIn {
  const call = callLeft(section.id, target, sections);
  if (call !== null) return { kind: 'call', from: call };
  return section.kind === 'task' ? { kind: 'task', from: section } : { kind: 'open', from: section };
}

/** The outermost call that a step from one section to another ends. */
function callLeft(from: string, to: string, sections: ReadonlyMap<string, Section>): CallSection | null {
  const steps = from.split('.');
  for (let depth = 1; depth < steps.length; depth += 1) {
    const id = steps.slice(0, depth).join('.');
    if (to !== id && to.startsWith(`${id}.`)) continue;
    const call = sections.get(id);
    return call?.kind === 'call' ? call : null;
  }
  return null;
}
