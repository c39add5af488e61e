import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawMap, layOut, mapOf } from '../../../engine/map/index.ts';
import { packCharts } from '../../../engine/map/pack-charts.ts';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { randomSections, treeOf } from '../../helpers/random-sections.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';
import { parsedXml } from '../../helpers/xml.ts';
import { mapFaults } from './map-faults.ts';

describe('layOut()', () => {
  test.each(shippedTrees)('lets nothing overlap and no line run through a symbol: $id', async ({ tree }) => {
    expect(mapFaults(await layOut(mapOf(tree as CompiledTree)))).toEqual([]);
  });

  test('lets nothing overlap and no line run through a symbol in random trees', async () => {
    await fc.assert(
      fc.asyncProperty(randomSections, async (sections) => {
        expect(mapFaults(await layOut(mapOf(treeOf(sections))))).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  test('gives the same places to the same tree', async () => {
    const graph = mapOf(shippedTrees[0]?.tree as CompiledTree);
    expect(await layOut(graph)).toEqual(await layOut(graph));
  });
});

describe('packCharts()', () => {
  test('brings the pieces to about the shape of a sheet', () => {
    const chart = { id: 'x', heading: null, width: 400, height: 800, nodes: [], lines: [] };
    const { width, height } = packCharts(Array.from({ length: 12 }, () => chart));
    expect(width / height).toBeGreaterThan(0.9);
    expect(width / height).toBeLessThan(2);
  });
});

describe('drawMap()', () => {
  test('is well-formed XML with the words in it, whatever they are', async () => {
    const words = fc.string({ unit: 'binary', maxLength: 60 });
    await fc.assert(
      fc.asyncProperty(words, words, words, async (title, heading, condition) => {
        const tree = treeOf(
          [
            {
              id: 'a',
              title: heading,
              hazards: [],
              blocks: [],
              kind: 'check',
              readings: [condition],
              outcomes: [{ condition: { kind: 'otherwise' }, written: condition, target: 'b', remark: [] }],
            },
            { id: 'b', title: heading, hazards: [], blocks: [], kind: 'stop', reason: [] },
          ],
          { title, symptom: title },
        );
        const svg = drawMap(await layOut(mapOf(tree)));
        parsedXml(svg, (document) => expect(document.root.name).toBe('svg'));
      }),
      { numRuns: 30 },
    );
  });

  test('has a name and a description, and a name for every symbol', async () => {
    const tree = shippedTrees[0]?.tree as CompiledTree;
    const svg = drawMap(await layOut(mapOf(tree)));
    const names = { s: 'http://www.w3.org/2000/svg' };
    parsedXml(svg, (document) => {
      expect(document.get('/s:svg/s:title', names)?.content).toBe(tree.title);
      expect(document.get('/s:svg/s:desc', names)?.content).toBe(tree.symptom);
      const labels = document.find("//s:g[@role='graphics-symbol']/@aria-label", names);
      expect(labels.length).toBeGreaterThan(tree.sections.length);
      for (const { content } of labels) expect(content).not.toBe('');
    });
    expect(svg).not.toMatch(/<script|javascript:|https?:\/\/(?!www\.w3\.org)/);
  });

  test('lets every circle lead to a section that is there', async () => {
    const svg = drawMap(await layOut(mapOf(shippedTrees[0]?.tree as CompiledTree)));
    const ids = new Set([...svg.matchAll(/ id="(s[\d.]+)"/g)].map(([, id]) => id));
    const goals = [...svg.matchAll(/ href="#(s[\d.]+)"/g)].map(([, id]) => id);
    expect(goals.length).toBeGreaterThan(5);
    expect(goals.filter((id) => !ids.has(id))).toEqual([]);
  });
});
