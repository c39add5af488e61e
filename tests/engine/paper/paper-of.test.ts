import fc from 'fast-check';
import { type DefaultTreeAdapterTypes, type ParserError, parse } from 'parse5';
import { describe, expect, test } from 'vitest';
import type { CompiledTree } from '../../../engine/model/compiled-tree.ts';
import type { Block, Inline } from '../../../engine/model/prose.ts';
import type { Section } from '../../../engine/model/section.ts';
import { sectionNumbers } from '../../../engine/outline/section-numbers.ts';
import { targetsOf } from '../../../engine/outline/targets-of.ts';
import { paperOf } from '../../../engine/paper/index.ts';
import { plainReading } from '../../helpers/plain-reading.ts';
import { randomSections, treeOf } from '../../helpers/random-sections.ts';
import { shippedTrees } from '../../helpers/shipped-trees.ts';

type Node = DefaultTreeAdapterTypes.ChildNode;
type Element = DefaultTreeAdapterTypes.Element;

interface Parsed {
  readonly elements: readonly Element[];
  readonly errors: readonly string[];
  readonly text: string;
}

function parsed(html: string): Parsed {
  const errors: string[] = [];
  const document = parse(html, {
    sourceCodeLocationInfo: true,
    onParseError: ({ code }: ParserError) => void errors.push(code),
  });
  const elements: Element[] = [];
  let text = '';
  const visit = (nodes: readonly Node[]): void => {
    for (const node of nodes) {
      if (node.nodeName === '#text') text += (node as DefaultTreeAdapterTypes.TextNode).value;
      if ('tagName' in node) elements.push(node);
      if ('childNodes' in node && node.nodeName !== 'style') visit(node.childNodes);
    }
  };
  visit(document.childNodes as Node[]);
  return { elements, errors, text };
}

const attribute = ({ attrs }: Element, name: string): string | undefined =>
  attrs.find((each) => each.name === name)?.value;

/** What a page must not hold, whoever wrote the tree. */
function loose({ elements, errors }: Parsed): readonly string[] {
  const tags = new Set(
    'html head meta title style body header section main footer aside div span p h1 h2 h3 h4 b strong em small code pre a ul ol li dl dt dd table thead tbody tr th td blockquote br hr img'.split(
      ' ',
    ),
  );
  const names = new Set(
    'id class href src alt lang charset name content http-equiv aria-hidden start'.split(' '),
  );
  return [
    ...errors,
    ...elements.filter(({ tagName }) => !tags.has(tagName)).map(({ tagName }) => `element ${tagName}`),
    ...elements.flatMap(({ attrs }) =>
      attrs.filter(({ name }) => !names.has(name)).map(({ name }) => `attribute ${name}`),
    ),
    ...elements
      .map((each) => attribute(each, 'href'))
      .filter((href) => href !== undefined && !href.startsWith('#')),
    ...elements
      .map((each) => attribute(each, 'src'))
      .filter((src) => src !== undefined && !src.startsWith('data:image/')),
  ].map(String);
}

const words = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 40 }),
  fc.constantFrom(
    '<script>alert(1)</script>',
    '</style><script>',
    '" onload="x',
    "javascript:alert('x')",
    '<!--',
    ']]>',
    '&amp;',
    'data:image/png;base64,AA" onerror="x',
  ),
);

const inline: fc.Arbitrary<Inline> = fc.oneof(
  words.map((value) => ({ type: 'text' as const, value })),
  words.map((value) => ({ type: 'code' as const, value })),
  fc
    .tuple(words, words)
    .map(([url, value]) => ({ type: 'link' as const, url, children: [{ type: 'text' as const, value }] })),
  fc.tuple(words, words).map(([url, alt]) => ({ type: 'image' as const, url, alt })),
  words.map((value) => ({ type: 'strong' as const, children: [{ type: 'text' as const, value }] })),
);
const inlines = fc.array(inline, { maxLength: 3 });
const block: fc.Arbitrary<Block> = fc.oneof(
  inlines.map((children) => ({ type: 'paragraph' as const, children })),
  inlines.map((children) => ({ type: 'heading' as const, depth: 3, children })),
  words.map((value) => ({ type: 'preformatted' as const, value })),
  inlines.map((children) => ({
    type: 'list' as const,
    ordered: true,
    start: 3,
    items: [[{ type: 'paragraph' as const, children }]],
  })),
  inlines.map((children) => ({
    type: 'quote' as const,
    children: [{ type: 'paragraph' as const, children }],
  })),
  inlines.map((children) => ({
    type: 'table' as const,
    align: ['right' as const],
    rows: [[children], [children]],
  })),
);

const said = (tree: CompiledTree): Parsed => parsed(paperOf(tree, { day: '2026-03-01' }));

describe('paperOf()', () => {
  test('holds nothing but text and plain elements, whatever the words', () => {
    fc.assert(
      fc.property(words, fc.array(block, { maxLength: 4 }), inlines, (title, blocks, reason) => {
        const hazards = [{ word: 'danger' as const, blocks, digest: '' }];
        const sections: readonly Section[] = [{ id: 'a', title, hazards, blocks, kind: 'stop', reason }];
        const page = said(treeOf(sections, { title, symptom: title, boards: [title], blocks, hazards }));
        expect(loose(page)).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test('tells the hazards of the tree before anything else is to be done', () => {
    for (const { tree } of shippedTrees) {
      const { text } = said(tree as CompiledTree);
      expect(text.indexOf('DANGER')).toBeGreaterThan(0);
      expect(text.indexOf('DANGER')).toBeLessThan(text.indexOf('Before you begin'));
    }
  });

  test('numbers every section and lets every way lead to one, on paper and by link', () => {
    fc.assert(
      fc.property(randomSections, (sections) => {
        const tree = treeOf(sections);
        const { elements } = said(tree);
        const numbers = sectionNumbers(sections);
        const ids = elements
          .filter(({ tagName }) => tagName === 'section')
          .map((each) => attribute(each, 'id'));
        expect(ids.filter((id) => id !== undefined)).toEqual(
          [...numbers.values()].map((number) => `s${number}`),
        );
        for (const link of elements.filter(({ tagName }) => tagName === 'a'))
          expect(ids).toContain(attribute(link, 'href')?.slice(1));
      }),
    );
  });

  test('names for every outcome the section to go to', () => {
    for (const { tree } of shippedTrees) {
      const compiled = tree as CompiledTree;
      const { elements } = said(compiled);
      const numbers = sectionNumbers(compiled.sections);
      const hrefs = elements.map((each) => attribute(each, 'href'));
      for (const section of compiled.sections)
        for (const target of targetsOf(section))
          if (numbers.has(target)) expect(hrefs).toContain(`#s${numbers.get(target)}`);
    }
  });

  test('says what each reading should show at the usual settings, and by what', () => {
    const reading = plainReading(
      'cpu_clk',
      {
        kind: 'quantity',
        unit: 'MHz',
        scale: {
          written: 'bus ± 1 %',
          bands: ['slow', 'good', 'fast'],
          limits: [0.99, 1.01].map((factor) => ({
            kind: 'binary',
            operator: '*',
            left: { kind: 'name', name: 'bus' },
            right: { kind: 'quantity', value: `${factor * 100}/100`, unit: '' },
          })),
          byMagnitude: false,
          nominal: null,
        },
      },
      ['good'],
    );
    const tree = treeOf(
      [
        {
          id: 'clock',
          title: 'Clock',
          hazards: [],
          blocks: [],
          kind: 'check',
          readings: ['cpu_clk'],
          outcomes: [{ condition: { kind: 'otherwise' }, written: 'otherwise', target: 'clock', remark: [] }],
        },
      ],
      {
        readings: [{ ...reading, points: ['pin 3', 'ground'], with: ['scope'], power: 'on' }],
        settings: [
          {
            kind: 'quantity',
            id: 'bus',
            is: 'Bus clock',
            unit: 'MHz',
            usual: { value: '50000000', unit: 'MHz' },
          },
        ],
      },
    );
    const { text } = said(tree);
    expect(text).toContain(
      'Should show 49.5 MHz .. 50.5 MHz at the usual settings, by bus ± 1 %. On this board:',
    );
    expect(text).toContain('slow < 49.5 MHz < good < 50.5 MHz < fast');
    expect(text).toContain('With: scope · Power on · At: pin 3 (red, channel 1); ground');
    expect(text).toMatch(/bus\s*Bus clock\s*50 MHz/);
  });

  test('is the same page for the same tree, and names its version', () => {
    for (const { tree } of shippedTrees) {
      const compiled = tree as CompiledTree;
      expect(paperOf(structuredClone(compiled))).toBe(paperOf(compiled));
      expect(said(compiled).text).toContain(compiled.digest.slice(0, 12));
    }
  });
});
