import type { AnalysisFacts, WrongEnd } from './analysis-facts.ts';
import { anyOf, short } from './phrases.ts';
import type { Example } from './tree-rule-facts.ts';
import type { WordTable } from './words.ts';

const quoted = (text: string): string => `"${short(text)}"`;

const ends: {
  readonly [How in WrongEnd['how']]: (end: Extract<WrongEnd, { readonly how: How }>) => string;
} = {
  'other-fault': ({ at }) => `to another fault, ${quoted(at)}`,
  stop: ({ at }) => `to the stop ${quoted(at)}`,
  'hand-over': ({ at }) => `out of this tree, to ${quoted(at)}`,
  nowhere: ({ at }) => `nowhere from ${quoted(at)}`,
  round: ({ loop }) => `round and round: ${shown(loop)}`,
  'only-if': ({ at, reading, band }) =>
    `to ${quoted(at)}, which may not be done while "${short(reading)}" is ${short(band)}`,
  when: ({ at, reading, condition, value }) =>
    `to ${quoted(at)}, where "${short(reading)}" is taken with ${short(condition)} ${short(value)}, and the board is not`,
};

const endOf = (end: WrongEnd): string => ends[end.how](end as never);

const mostTitles = 5;
const longestTitle = 24;

/** Titles in the order of a walk, the middle left out where there are many. */
function shown(path: readonly string[]): string {
  const titles = path.map(
    (title) => `"${title.length > longestTitle ? `${title.slice(0, longestTitle)}…` : title}"`,
  );
  if (titles.length <= mostTitles) return titles.join(' → ');
  return [...titles.slice(0, 2), '…', ...titles.slice(3 - mostTitles)].join(' → ');
}

const byWhat = (by: Example): string =>
  by
    .slice(0, 3)
    .map(({ name, band }) => `${short(name)} ${short(band)}`)
    .join(', ');

interface Way {
  readonly parted: string;
  readonly by: Example;
  readonly path: readonly string[];
}

const mendWay = ({ parted, by, path }: Way): string => {
  const at = by.length === 0 ? '' : `, at ${byWhat(by)}`;
  return `Change an outcome or what the fault shows; the way is ${shown(path)} and parts in ${quoted(parted)}${at}`;
};

/** The words for problems that only show on walks through the whole tree. */
export const analysisWords: WordTable<AnalysisFacts> = {
  'outcome-never-on-a-walk': {
    severity: 'warning',
    wrong: ({ written, known }) =>
      known === null
        ? `${quoted(written)} can never be taken on any walk that comes here`
        : `${quoted(written)} can never be taken: on every walk that comes here "${short(known.name)}" was already ${anyOf(known.bands)}`,
    mend: () => 'Take it away, or do something on the way that can change what was read',
  },
  'section-never-entered': {
    severity: 'warning',
    wrong: ({ title }) =>
      `No walk comes to the section ${quoted(title)}: what leads to it can never be taken`,
    mend: () => 'Lead to it from where it can be needed, or take it away',
  },
  'fault-unreached': {
    severity: 'error',
    wrong: ({ fault, title }) =>
      `The fault "${fault}" is never found, because no walk comes to ${quoted(title)}`,
    mend: ({ title }) => `Let an outcome that can be taken lead to ${quoted(title)}`,
  },
  'fault-misled': {
    severity: 'error',
    wrong: ({ fault, end }) => `The fault "${fault}" is never found: what it shows leads ${endOf(end)}`,
    mend: mendWay,
  },
  'fault-partly-found': {
    severity: 'warning',
    wrong: ({ fault, share, end }) =>
      `The fault "${fault}" is found in ${share} % of the cases only; some of what it shows leads ${endOf(end)}`,
    mend: mendWay,
  },
  'condition-not-set': {
    severity: 'warning',
    wrong: ({ reading, condition, value }) =>
      `"${short(reading)}" is taken with ${condition} ${value}, but no walk that comes here has brought the board there`,
    mend: ({ condition, value, elsewhere }) =>
      elsewhere
        ? `Lead here by way of a task with "Do, ${condition} ${value}: …"`
        : `Put a task before it: "Do, ${condition} ${value}: …"`,
  },
  'power-before-ohms': {
    severity: 'warning',
    wrong: ({ reading, title }) =>
      `${quoted(title)} powers the board for "${short(reading)}" although no resistance was measured before with the power off`,
    mend: () => 'Measure the rails to ground first, or let the reading ask for it: only if',
  },
  'no-way-without-tool': {
    severity: 'warning',
    wrong: ({ tool, title, checks }) =>
      checks > 1
        ? `Without the tool "${short(tool)}" there is no way on from ${quoted(title)}, nor from ${checks - 1} other check${checks > 2 ? 's' : ''}`
        : `Without the tool "${short(tool)}" there is no way on from ${quoted(title)}`,
    mend: () => 'Add an outcome: cannot read → …',
  },
};
