import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mapOf } from '../../../engine/map/index.ts';
import { waysOfSection } from '../../../engine/map/ways-of-section.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { callerOf, sectionNumbers } from '../../../engine/outline/section-numbers.ts';
import { randomSections, treeOf } from '../../helpers/random-sections.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

const randomTrees = randomSections.map((sections) => treeOf(sections));

/** Where each way leads on the map: to the section itself, or to a circle that names it, or to an end of the procedure. */
function drawnWays(tree: CompiledTree): readonly string[] {
  const { charts } = mapOf(tree);
  const nodes = new Map(charts.flatMap((chart) => chart.nodes.map((node) => [node.id, node])));
  const edges = charts.flatMap((chart) => chart.edges);
  return tree.sections.flatMap((section) =>
    waysOfSection(section).flatMap(({ target }, at) => {
      const from = nodes.has(`${section.id}?${at}`) ? `${section.id}?${at}` : section.id;
      const goals = edges.filter((edge) => edge.from === from && !edge.close).map(({ to }) => nodes.get(to));
      const there = goals.some(
        (goal) =>
          goal?.section === target || (callerOf(section.id) !== callerOf(target) && goal?.role === 'end'),
      );
      return there ? [] : [`${section.id} to ${target}`];
    }),
  );
}

describe('mapOf()', () => {
  test('draws every section once, with its number; a tree that is handed over to, at every way there', () => {
    fc.assert(
      fc.property(randomTrees, (tree) => {
        const numbers = sectionNumbers(tree.sections);
        const nodes = mapOf(tree).charts.flatMap((chart) => chart.nodes);
        for (const { id, kind } of tree.sections) {
          if (kind === 'hand-over') continue;
          const own = nodes.filter((node) => node.id === id);
          expect(own.map(({ number }) => number)).toEqual([numbers.get(id) ?? null]);
        }
        expect(new Set(nodes.map(({ id }) => id)).size).toBe(nodes.length);
      }),
    );
  });

  test('draws every way to where it leads', () => {
    fc.assert(
      fc.property(randomTrees, (tree) => {
        expect(drawnWays(tree)).toEqual([]);
      }),
    );
  });

  test('has for every circle that a line ends in the one with which it goes on, and the other way round', () => {
    fc.assert(
      fc.property(randomTrees, (tree) => {
        const circles = mapOf(tree).charts.flatMap((chart) =>
          chart.nodes.filter(({ symbol }) => symbol === 'connector'),
        );
        const named = (role: string) =>
          [...new Set(circles.filter((node) => node.role === role).map(({ section }) => section))].toSorted();
        expect(named('goes on at')).toEqual(named('comes from'));
      }),
    );
  });

  test('says on every way out of a check when it is taken', () => {
    for (const { tree } of shippedTrees) {
      const compiled = tree as CompiledTree;
      const words = mapOf(compiled)
        .charts.flatMap((chart) => chart.nodes)
        .filter(({ symbol }) => symbol === 'words')
        .flatMap(({ notes }) => notes.map((note) => note.replace(/^or /, '')));
      const written = compiled.sections.flatMap((section) =>
        section.kind === 'check'
          ? section.outcomes.map((outcome) => outcome.written.replaceAll('`', ''))
          : [],
      );
      const ends = compiled.sections.flatMap((section) =>
        section.kind === 'call' ? section.ends.map(({ end }) => end) : [],
      );
      expect(words.toSorted()).toEqual([...written, ...ends].toSorted());
    }
  });

  test('begins with the symptom and ends every fault with a mended board', () => {
    for (const { tree } of shippedTrees) {
      const compiled = tree as CompiledTree;
      const nodes = mapOf(compiled).charts.flatMap((chart) => chart.nodes);
      expect(nodes.filter(({ role }) => role === 'begin')[0]?.title).toBe(compiled.symptom);
      expect(nodes.filter(({ title, role }) => role === 'end' && title === 'Mended')).toHaveLength(
        compiled.sections.filter(({ kind }) => kind === 'fault').length,
      );
    }
  });

  test('is the same for the same tree', () => {
    fc.assert(
      fc.property(randomTrees, (tree) => {
        expect(mapOf(structuredClone(tree))).toEqual(mapOf(tree));
      }),
    );
  });
});
