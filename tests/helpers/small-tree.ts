import assert from 'node:assert/strict';
import type { Diagnostic } from '../../engine/diagnostics/diagnostic.ts';
import { linkTree } from '../../engine/link/link-tree.ts';
import type { LinkedTree } from '../../engine/link/linked-tree.ts';
import type { Reading } from '../../engine/model/reading.ts';
import type { TreeFacts } from '../../engine/model/tree-facts.ts';
import { readHead } from '../../engine/read/read-head.ts';
import { readSection } from '../../engine/read/read-section.ts';
import { allNormal, eachBands } from '../../engine/scale/index.ts';
import { plainReading } from './plain-reading.ts';

/** Facts in short: a reading is its bands, `*` before the normal ones and `?` before all where nothing is judged;
 *  `tries 20` counts, and `each A0 A1 A2: *moves stuck` is many alike. */
export interface ShortFacts {
  readonly readings?: Readonly<Record<string, string>>;
  /** A setting is its options, or a quantity with its unit: `= MHz`. */
  readonly settings?: Readonly<Record<string, string>>;
  /** A fault is what it shows: `v5 low, pg none`. */
  readonly faults?: Readonly<Record<string, string>>;
  readonly given?: Readonly<Record<string, string>>;
  /** The values of a condition of the board: `in out`. */
  readonly conditions?: Readonly<Record<string, string>>;
}

export function factsOf({
  readings = {},
  settings = {},
  faults = {},
  given = {},
  conditions = {},
}: ShortFacts): TreeFacts {
  return {
    title: 'A tree',
    symptom: 'Nothing moves',
    boards: ['486'],
    minutes: 2,
    given: Object.entries(given).map(([reading, band]) => ({ reading, band })),
    conditions: Object.entries(conditions).map(([id, text]) => ({ id, values: text.split(' ') })),
    foreign: { settings: new Set(), readings: new Set(), faults: new Set() },
    tools: null,
    settings: Object.entries(settings).map(([id, text]) =>
      text.startsWith('=')
        ? { kind: 'quantity', id, is: id, unit: text.slice(1).trim(), usual: null }
        : { kind: 'options', id, is: id, options: optionsOf(text), usual: null },
    ),
    readings: Object.entries(readings).map(([id, text]) => readingOf(id, text)),
    faults: Object.entries(faults).map(([id, text]) => ({
      id,
      is: id,
      weight: 1,
      weights: {},
      sets: {},
      onlyIf: [],
      which: null,
      shows: text
        .split(',')
        .filter((each) => each.trim() !== '')
        .map((each) => {
          const [reading = '', band = ''] = each.trim().split(' ');
          return { reading, shares: [{ band, share: 1 }] };
        }),
      rest: 'normal',
      comes: 'always',
      parts: [],
      tools: [],
      minutes: null,
      source: null,
    })),
  };
}

const optionsOf = (text: string) =>
  text.split(' ').map((name) => ({ name: name.replace(/^[*?]/, ''), means: null }));

function readingOf(id: string, text: string): Reading {
  const words = text.split(' ');
  if (words[0] === 'tries') return plainReading(id, { kind: 'tries', enough: Number(words[1]) }, ['always']);
  if (words[0] === 'each') return eachReading(id, text);
  return plainReading(
    id,
    { kind: 'options', options: optionsOf(text) },
    text.startsWith('?') ? 'any' : words.filter((word) => word.startsWith('*')).map((word) => word.slice(1)),
  );
}

function eachReading(id: string, text: string): Reading {
  const [, members = '', one = ''] = /^each ([^:]*): (.*)$/.exec(text) ?? [];
  const { measure: of, normal } = readingOf(id, one);
  assert(of.kind === 'options' && normal !== 'any', 'expected many alike to be options with normal ones');
  const names = members.split(' ');
  const bands = eachBands(
    names.length,
    of.options.map(({ name }) => name),
    normal,
  );
  return plainReading(id, { kind: 'each', members: names, of, normal, bands }, [allNormal]);
}

export interface Linked {
  readonly tree: LinkedTree;
  /** Everything that reading and linking report, in offsets of the body. */
  readonly diagnostics: readonly Diagnostic[];
}

/** A tree from facts in short and the text of a body. */
export function linkedTree(facts: ShortFacts, body: string): Linked {
  const starts = [0, ...[...body.matchAll(/^## /gm)].map(({ index }) => index)];
  const slices = starts.map((from, index) => ({
    from,
    text: body.slice(from, starts[index + 1] ?? body.length),
  }));
  const [headSlice = { from: 0, text: '' }, ...others] =
    slices[1]?.from === 0 ? [{ from: 0, text: '' }, ...slices.slice(1)] : slices;
  const head = readHead(headSlice.text);
  const sections = others.map(({ from, text }) => ({ from, ...readSection(text) }));
  const linked = linkTree(factsOf(facts), () => ({ from: 0, to: 0 }), {
    head: { from: headSlice.from, syntax: head.value },
    sections: sections.map(({ from, value }) => ({ from, syntax: value })),
  });
  const read = sections.flatMap(({ diagnostics, from }) =>
    diagnostics.map((each) => ({ ...each, span: { from: each.span.from + from, to: each.span.to + from } })),
  );
  return { tree: linked.value, diagnostics: [...head.diagnostics, ...read, ...linked.diagnostics] };
}
