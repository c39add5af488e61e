import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import { scxmlOf } from '../../../engine/scxml/index.ts';
import { randomSections, treeOf } from '../../helpers/random-sections.ts';
import { interpreted } from '../../helpers/scxml-runs.ts';
import { linkedTree } from '../../helpers/small-tree.ts';
import { parsedXml } from '../../helpers/xml.ts';

const namespaces = { s: 'http://www.w3.org/2005/07/scxml' };
const found = (text: string, path: string): readonly string[] =>
  parsedXml(text, (document) => document.find(path, namespaces).map(({ content }) => content));

const { tree } = linkedTree(
  { readings: { v5: '*good low none' }, faults: { fuse: 'v5 low' } },
  [
    '## Five volts',
    'Read `v5`.',
    '',
    '- low, none → [Fuse](#fuse)',
    '- cannot read → [Fine](#fine)',
    '- otherwise → [Fine](#fine)',
    '',
    '## Fuse',
    'Fault `fuse`.',
    '',
    'Change it.',
    '',
    'Prove `v5`.',
    '',
    '## Fine',
    'Stop: The supply is up.',
  ].join('\n'),
);
const small = treeOf(tree.sections.map(({ section }) => section));

describe('scxmlOf()', () => {
  test('is a document of the W3C namespace, version 1.0, with the ECMAScript data model', () => {
    expect(found(scxmlOf(small), '/s:scxml/@version')).toEqual(['1.0']);
    expect(found(scxmlOf(small), '/s:scxml/@datamodel')).toEqual(['ecmascript']);
  });

  test('says of a check which bands lead where, in the order of its lines', () => {
    const check = "//s:state[@id='s-five-volts']/s:transition[@event='checked']";
    expect(found(scxmlOf(small), `${check}/@target`)).toEqual(['s-fuse', 's-fine']);
    expect(found(scxmlOf(small), `${check}/@cond`)).toEqual([
      "['low', 'none'].indexOf(_event.data.bands['v5']) !== -1",
    ]);
    expect(found(scxmlOf(small), "//s:transition[@event='unread']/@target")).toEqual(['s-fine']);
  });

  test('holds the phases of a fault inside its section, and ends with a mended board', () => {
    expect(found(scxmlOf(small), "//s:state[@id='s-fuse']/s:state/@id")).toEqual([
      's-fuse.remedy-1',
      's-fuse.proof-1',
      's-fuse.aside',
    ]);
    expect(found(scxmlOf(small), "//s:state[@id='s-fuse.proof-1']/s:transition/@target")).toEqual([
      'mended',
      's-fuse.aside',
    ]);
    expect(found(scxmlOf(small), '/s:scxml/s:final/@id')).toEqual(['mended']);
  });

  test('holds the sections of a procedure inside the section that follows it', () => {
    const nested: CompiledTree = {
      ...small,
      machine: {
        id: 'tree',
        initial: 's-find',
        states: {
          's-find': {
            initial: 'call',
            states: {
              call: { on: { done: [{ target: '#tree.s-find.s-halve-it' }] } },
              's-halve-it': { on: { checked: [{ target: '#tree.s-fine' }] } },
            },
          },
          's-fine': {},
          mended: { type: 'final' },
        },
      },
    };
    expect(found(scxmlOf(nested), "//s:state[@id='s-find']/s:state/@id")).toEqual([
      's-find.call',
      's-find.s-halve-it',
    ]);
    expect(found(scxmlOf(nested), "//s:state[@id='s-find.call']/s:transition/@target")).toEqual([
      's-find.s-halve-it',
    ]);
  });

  test('names every target among its ids, which are all different', () => {
    fc.assert(
      fc.property(randomSections, (sections) => {
        const text = scxmlOf(treeOf(sections));
        const ids = found(text, '//@id');
        expect(new Set(ids).size).toBe(ids.length);
        for (const target of found(text, '//@target')) expect(ids).toContain(target);
      }),
    );
  });

  test('is well-formed and means the same whatever the title and the symptom', async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: 'binary' }), async (words) => {
        const text = scxmlOf({ ...small, title: words, symptom: words });
        expect(found(text, '//s:final/@id')).toEqual(['mended']);
        const begin = await interpreted(text);
        expect(begin().start()).toEqual(['s-five-volts']);
      }),
      { numRuns: 200 },
    );
  });

  test('is the same text for the same tree', () => {
    expect(scxmlOf(structuredClone(small))).toBe(scxmlOf(small));
  });
});
