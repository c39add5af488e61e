import type { CallSection, Section } from '../model/section.ts';
import { type Division, divide } from './divide.ts';
import type { MapChart, MapEdge, MapNode } from './map-graph.ts';
import { tellSection } from './tell-section.ts';
import { type MapWay, waysOfSection } from './ways-of-section.ts';

/** Sections that stand in one file, and how one comes in and goes out. */
export interface Flow {
  readonly sections: readonly Section[];
  /** Printed numbers by section id, of other files too. */
  readonly numbers: ReadonlyMap<string, string>;
  readonly heading: string | null;
  /** What stands in the terminator on top. */
  readonly begin: Pick<MapNode, 'title' | 'notes'>;
  readonly first: string;
  /** The ends of a procedure, by where they lead. */
  readonly ends: CallSection['ends'];
}

interface Drawn {
  readonly nodes: readonly MapNode[];
  readonly edges: readonly MapEdge[];
}

export function chartsOf(flow: Flow): readonly MapChart[] {
  const own = flow.sections.filter(({ kind }) => kind !== 'hand-over');
  const divisions = own.length === 0 ? [] : divide(own);
  return divisions.map((division, at) => {
    const parts = [
      ...division.sections.flatMap((section) => [
        enter(flow, division, section),
        draw(flow, section),
        ...leave(flow, division, section),
      ]),
    ];
    return {
      id: division.sections[0]?.id ?? '',
      heading:
        flow.heading !== null && divisions.length > 1
          ? `${flow.heading} (${at + 1} of ${divisions.length})`
          : flow.heading,
      nodes: parts.flatMap(({ nodes }) => nodes),
      edges: parts.flatMap(({ edges }) => edges),
    };
  });
}

const plain = { section: null, number: null, notes: [] };

/** The section itself: a check with the diamond where its ways part, a fault with the end below it. */
function draw({ numbers }: Flow, section: Section): Drawn {
  const { id, title, kind } = section;
  const node: MapNode = { id, title, section: id, number: numbers.get(id) ?? null, ...tellSection(section) };
  const parting = waysOfSection(section).some(({ conditions }) => conditions.length > 0);
  if (parting) {
    const diamond: MapNode = { ...plain, id: `${id}?`, symbol: 'decision', title: '', role: 'decision' };
    return { nodes: [node, diamond], edges: [{ from: id, to: diamond.id, arrow: false, close: true }] };
  }
  if (kind !== 'fault') return { nodes: [node], edges: [] };
  const end: MapNode = { ...plain, id: `${id}!`, symbol: 'terminator', title: 'Mended', role: 'end' };
  return { nodes: [node, end], edges: [{ from: id, to: end.id, arrow: true, close: true }] };
}

/** What leads to the section from nowhere else in this piece: the beginning, and a circle for all far ways. */
function enter(flow: Flow, { drawn }: Division, { id }: Section): Drawn {
  const from = flow.sections
    .filter((other) => waysOfSection(other).some(({ target }) => target === id) && !drawn(other.id, id))
    .map((other) => flow.numbers.get(other.id) ?? '');
  const begin: readonly MapNode[] =
    id === flow.first
      ? [{ ...plain, id: `begin ${id}`, symbol: 'terminator', role: 'begin', ...flow.begin }]
      : [];
  const circle: readonly MapNode[] =
    from.length > 0
      ? [
          {
            id: `to ${id}`,
            symbol: 'connector',
            section: id,
            number: flow.numbers.get(id) ?? null,
            title: '',
            notes: [`from ${from.join(', ')}`],
            role: 'comes from',
          },
        ]
      : [];
  const nodes = [...begin, ...circle];
  return { nodes, edges: nodes.map((node) => ({ from: node.id, to: id, arrow: true, close: false })) };
}

/** The ways out, each with its condition: to a section of this piece, a circle, or an end of the procedure. */
function leave(flow: Flow, { drawn }: Division, section: Section): readonly Drawn[] {
  const ways = waysOfSection(section);
  return ways.map((way, at): Drawn => {
    const { id } = section;
    const goal = goalOf(flow, section, way, at, drawn);
    const to = typeof goal === 'string' ? goal : goal.id;
    const nodes = typeof goal === 'string' ? [] : [goal];
    if (way.conditions.length === 0) return { nodes, edges: [{ from: id, to, arrow: true, close: false }] };
    const words: MapNode = {
      ...plain,
      id: `${id}?${at}`,
      symbol: 'words',
      title: '',
      notes: way.conditions.map((condition, line) => (line === 0 ? condition : `or ${condition}`)),
      role: 'condition',
    };
    return {
      nodes: [words, ...nodes],
      edges: [
        { from: `${id}?`, to: words.id, arrow: false, close: false },
        { from: words.id, to, arrow: true, close: false },
      ],
    };
  });
}

/** The id of a symbol that stands in this piece, or a symbol for what stands elsewhere. */
function goalOf(
  { sections, numbers, ends }: Flow,
  { id }: Section,
  { target }: MapWay,
  at: number,
  drawn: Division['drawn'],
): string | MapNode {
  if (drawn(id, target)) return target;
  const goal = sections.find((section) => section.id === target);
  if (goal?.kind === 'hand-over')
    return { ...plain, id: `${id}>${at}`, section: target, title: goal.title, ...tellSection(goal) };
  if (goal !== undefined)
    return {
      id: `${id}>${at}`,
      symbol: 'connector',
      section: target,
      number: numbers.get(target) ?? null,
      title: '',
      notes: [goal.title],
      role: 'goes on at',
    };
  const names = ends.filter((end) => end.target === target).map(({ end }) => end);
  const title = names.length > 0 ? names.join(' or ') : `on at ${numbers.get(target) ?? target}`;
  return { ...plain, id: `${id}>${at}`, symbol: 'terminator', title, role: 'end' };
}
