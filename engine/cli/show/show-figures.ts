import { adviceWords } from '../../figures/advice/advice-words.ts';
import type { Figures, GroupFigures } from '../../figures/figures.ts';
import { splittingWords } from '../../figures/testability/splitting-words.ts';
import type { CompiledTree } from '../../model/compiled-tree.ts';
import { wrap } from '../../prose/plain-text.ts';
import { perCent } from '../../suspects/per-cent.ts';
import { columns } from './columns.ts';

/** So much is printed of what could go on; all of it is in the JSON. */
const most = { advice: 10, steps: 12, pairs: 5, sections: 10 };

/** Advice that saves less is not printed, in minutes. */
const least = 0.1;

/** All figures of a tree as plain text, a blank line between the parts. */
export function showFigures(tree: CompiledTree, figures: Figures, width: number): string {
  const parts = [
    head(figures, width),
    along(figures),
    best(figures, width),
    faults(figures),
    testability(figures),
  ];
  return [
    ...parts,
    groups(figures, width),
    pairs(figures),
    sections(tree, figures),
    advice(tree, figures, width),
  ]
    .filter((part) => part !== '')
    .join('\n\n');
}

const minutes = (value: number): string => value.toFixed(1);

/** Numbers stand below each other. */
const right = (rows: readonly (readonly string[])[], from = 1): readonly (readonly string[])[] => {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => (row[at] ?? '').length)));
  return rows.map((row) => row.map((word, at) => (at < from ? word : word.padStart(widths[at] ?? 0))));
};

function head({ title, settings }: Figures, width: number): string {
  const said = Object.entries(settings).map(([id, value]) => `${id} ${value}`);
  if (said.length === 0) return title;
  return `${title}\n${wrap(`Reckoned at the usual settings: ${said.join(', ')}`, width)}`;
}

function along({ along: { expected, worst, arrives } }: Figures): string {
  const rows = right([
    ['Minutes along the tree', 'hands-on', 'waiting'],
    ['  expected', minutes(expected.handsOn), minutes(expected.waiting)],
    ['  at worst', minutes(worst.handsOn), minutes(worst.waiting)],
  ]);
  return `${columns(rows, '')}\n  it leads to the right section on ${perCent(arrives)} of the boards`;
}

function best(
  { best: { low, high, exact, looked, begins, silent }, along: { expected } }: Figures,
  width: number,
): string {
  const tree = expected.handsOn + expected.waiting;
  const found = exact
    ? `${minutes(high)} minutes expected, waiting included; no order takes less. The tree takes ${minutes(tree)}.`
    : `${minutes(high)} minutes expected, waiting included, is the best order found; no order takes less than ${minutes(low)}. The tree takes ${minutes(tree)}. The search looked into ${looked} states and was not at its end: --budget gives it more.`;
  const steps = begins
    .slice(0, most.steps)
    .map(({ take }) => take.join(', '))
    .join(' → ');
  const more = begins.length > most.steps ? ' …' : '';
  return [
    'Best order of the same readings',
    indented(found, width),
    ...(steps === '' ? [] : [indented(`Where the likeliest happens every time: ${steps}${more}`, width)]),
    ...(silent.length === 0
      ? []
      : [
          indented(
            `Taken to say nothing, so that the best may be better still: ${silent
              .map(({ fault, readings }) => `${readings.length} readings of ${fault}`)
              .join(', ')}.`,
            width,
          ),
        ]),
  ].join('\n');
}

function faults({ along: { faults: all } }: Figures): string {
  const rows = all
    .toSorted((one, other) => other.share - one.share)
    .map(({ fault, share, expected, worst, arrives }) => [
      `  ${fault}`,
      perCent(share),
      minutes(expected.handsOn),
      minutes(expected.waiting),
      minutes(worst.handsOn + worst.waiting),
      arrives === 1 ? '' : `${perCent(arrives)} arrive`,
    ]);
  return columns(right([['Each fault', 'boards', 'hands-on', 'waiting', 'at worst', ''], ...rows]), '');
}

function testability({ testability: { taken, declared } }: Figures): string {
  const row = (name: string, of: (one: typeof taken) => string): readonly string[] => [
    `  ${name}`,
    of(taken),
    of(declared),
  ];
  return columns(
    right([
      ['What readings can tell', 'that the tree takes', 'all declared'],
      row('readings', ({ readings }) => String(readings)),
      row('boards with a reading out of normal', ({ detected }) => perCent(detected)),
      ...[0, 1, 2].map((at) =>
        row(`of those, down to ${at === 0 ? 'one fault' : `${at + 1} faults`}`, ({ isolated }) =>
          perCent(isolated[at] ?? 0),
        ),
      ),
      row('mean ambiguity group, rate-weighted', ({ meanGroup }) => meanGroup.rateWeighted.toFixed(2)),
    ]),
    '',
  );
}

function groups({ groups: all }: Figures, width: number): string {
  if (all.length === 0) return '';
  const lines = all.map((group) => groupLine(group));
  return ['No reading of the tree tells apart', ...lines.map((line) => indented(line, width))].join('\n');
}

function groupLine({
  faults: names,
  share,
  minutes: expected,
  minutesKnown,
  splitting,
}: GroupFigures): string {
  const order = `${names.join(', ')} (${perCent(share)} of the boards): try them in this order`;
  const told = minutesKnown ? `, ${minutes(expected)} minutes of remedies expected` : '';
  const by = splitting.map((one) => splittingWords(one, names));
  return `${order}${told}.${by.length === 0 ? '' : ` To tell them apart: ${by.join('; or ')}.`}`;
}

function pairs({ testability: { taken } }: Figures): string {
  if (taken.sometimes.length === 0) return '';
  const rows = taken.sometimes
    .slice(0, most.pairs)
    .map(({ fault, other, share }) => [`  ${fault}`, perCent(share), `with ${other}`]);
  return columns([['Left together in some cases', '', ''], ...rows], '');
}

function sections(tree: CompiledTree, { sections: all }: Figures): string {
  const title = (id: string): string => tree.sections.find((section) => section.id === id)?.title ?? id;
  const dearest = all
    .toSorted((one, other) => other.reach * other.minutes - one.reach * one.minutes)
    .slice(0, most.sections);
  const rows = all
    .filter((section) => dearest.includes(section))
    .map(({ section, reach, minutes: each, bits }) => [
      `  ${title(section)}`,
      minutes(reach * each),
      perCent(reach),
      minutes(each),
      bits.toFixed(2),
    ]);
  return columns(right([['Where the minutes go', 'of all', 'boards', 'each', 'bits'], ...rows]), '');
}

function advice(tree: CompiledTree, { advice: all }: Figures, width: number): string {
  const told = all.filter(({ saves }) => saves >= least).slice(0, most.advice);
  if (told.length === 0) return '';
  return [
    'What to change, each reckoned for itself',
    ...told.map((one) => `  - ${wrap(adviceWords(tree, one), width - 4).replaceAll('\n', '\n    ')}`),
  ].join('\n');
}

const indented = (text: string, width: number): string =>
  `  ${wrap(text, width - 2).replaceAll('\n', '\n  ')}`;
