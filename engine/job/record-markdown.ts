import type { JobRecord, RecordReading, RecordRemedy } from '../model/record.ts';
import { suspectLines } from './suspect-lines.ts';

/** Who the page is for: the owner's copy fits one page, the bench copy has every reading. */
export type Audience = 'owner' | 'bench';

/** The record as a Markdown page. */
export function recordMarkdown(record: JobRecord, audience: Audience): string {
  const parts = [
    `# ${literal(record.board || 'Board')}: ${outcomeWords[record.outcome]}`,
    heading(record),
    part(
      'Done all the same',
      record.overrides.map(
        ({ at, what, why }) =>
          `- ${literal(what)}, ${day(at)}, although what must be seen first was not: ${literal(why)}`,
      ),
    ),
    part('What was wrong', record.remedies.filter(({ effect }) => effect !== 'no effect').map(causeLine)),
    part('Parts', record.remedies.flatMap(partLines)),
    part(
      'Tried without effect',
      record.remedies.filter(({ effect }) => effect === 'no effect').map(causeLine),
    ),
    part('Proof', record.proof.map(proofLine)),
    part(
      'Still to do',
      record.openWork.map(({ text }) => `- ${literal(text)}`),
    ),
    ...(record.outcome === 'not mended' ? [suspectsPart(record)] : []),
    part('To the owner', record.closing === '' ? [] : [literal(record.closing)]),
    ...(audience === 'bench' ? benchParts(record) : []),
  ];
  return `${parts.filter((text) => text !== '').join('\n\n')}\n`;
}

export const outcomeWords: Readonly<Record<JobRecord['outcome'], string>> = {
  mended: 'mended',
  'not mended': 'not mended',
  open: 'still on the bench',
};

const literal = (text: string): string => text.replace(/[\\`*_[\]<>|#]/g, '\\$&');
const day = (at: string): string => at.slice(0, 10);
const time = (at: string): string => `${at.slice(0, 10)} ${at.slice(11, 16)}`;

function part(title: string, lines: readonly string[]): string {
  return lines.length === 0 ? '' : `## ${title}\n\n${lines.join('\n')}`;
}

function heading(record: JobRecord): string {
  const rows = [
    ['Owner', record.owner],
    ['As brought in', record.story],
    ['Symptom', record.tree.symptom],
    ['Board sheet', record.sheet?.title ?? ''],
    [
      'On the bench',
      record.closed === null
        ? `since ${day(record.opened)}`
        : `${day(record.opened)} to ${day(record.closed)}`,
    ],
    ...record.settings.map(({ is, value }) => [is, value]),
  ];
  return rows
    .filter(([, value]) => value !== '')
    .map(([name, value]) => `- **${literal(name ?? '')}**: ${literal(value ?? '')}`)
    .join('\n');
}

function causeLine({ is, which, at, effect }: RecordRemedy): string {
  const where = which === '' ? '' : ` (${literal(which)})`;
  const open =
    effect === 'waits for proof'
      ? ', not proven yet'
      : effect === 'more is wrong'
        ? ', not the only fault'
        : '';
  return `- ${literal(is)}${where}, ${day(at)}${open}`;
}

const partLines = ({ parts }: RecordRemedy): readonly string[] =>
  parts.map(({ what, cost }) => `- ${literal(what)}${cost === null ? '' : `: ${literal(cost)}`}`);

const proofLine = ({ is, value, expected }: RecordReading): string =>
  `- ${literal(is)}: ${literal(value)}${expected === '' ? '' : `, should be ${literal(expected)}`}`;

function benchParts(record: JobRecord): readonly string[] {
  return [
    part('Readings', [
      '| # | When | Where | Reading | Value | Band | Should be | Verdict |',
      '| --: | --- | --- | --- | --- | --- | --- | --- |',
      ...record.readings.map(readingRow),
    ]),
    part(
      'Together',
      record.findings.map(({ text }) => `- ${literal(text)}`),
    ),
    part('How it was measured', benchLines(record)),
    part(
      'Besides',
      record.events.map(({ at, text }) => `- ${time(at)}: ${literal(text)}`),
    ),
    part('Way', record.path.length === 0 ? [] : [literal(record.path.join(' → '))]),
    ...(record.outcome === 'open' ? [suspectsPart(record)] : []),
    part(
      'Ruled out',
      record.ruledOut.map(({ is, by }) => `- ${literal(is)}, by ${literal(by)}`),
    ),
    part(
      'Notes',
      record.notes.map(({ at, text }) => `- ${time(at)}: ${literal(text)}`),
    ),
    walkedWith(record),
  ];
}

const suspectsPart = (record: JobRecord): string =>
  part(
    'What it may be',
    suspectLines(record).map((line) => `- ${literal(line)}`),
  );

const rules = {
  simple: 'Simple acceptance: a value counts as what was shown (JCGM 106)',
  guarded: 'Guarded acceptance: a value near a limit counts as all that it can be (JCGM 106)',
} as const;

/** What was at the bench, how values near a limit were taken, and the known-good board's values that limits rested on. */
function benchLines({ bench, readings }: JobRecord): readonly string[] {
  const twins = readings.flatMap(({ is, twin }) => (twin === null ? [] : [`${is}: ${twin}`]));
  const known = [...new Set(twins)].map((text) => `- Known-good board, ${literal(text)}`);
  if (bench === null) return known;
  return [
    ...bench.instruments.map((text) => `- ${literal(text)}`),
    ...(bench.lacking.length === 0 ? [] : [`- Not at hand: ${literal(bench.lacking.join(', '))}`]),
    `- ${rules[bench.rule]}`,
    ...known,
  ];
}

function walkedWith({ tree, laterTrees, sheet, job }: JobRecord): string {
  const named = ({ title, id, digest }: { title: string; id: string; digest: string }): string =>
    `"${literal(title)}" (${literal(id)}, ${digest.slice(0, 12)})`;
  const words = { 'handed over': 'handed over to', newer: 'then its newer version' } as const;
  const later = laterTrees.map((each) => `, ${words[each.why]} ${named(each)}`).join('');
  const board = sheet === null ? '' : `, board sheet ${named(sheet)}`;
  return `Walked with ${named(tree)}${later}${board}, job ${literal(job)}.`;
}

/** `4.76 V ± 33.8 mV, climbs` */
function valueCell({ value, doubt, mark }: RecordReading): string {
  return [`${value}${doubt === null ? '' : ` ${doubt.plusMinus}`}`, ...(mark === null ? [] : [mark])].join(
    ', ',
  );
}

function verdictCell({ aside, verdict, doubt }: RecordReading): string {
  if (aside !== null) return aside;
  return doubt?.verdict == null ? verdict : `${verdict} (${doubt.verdict})`;
}

function readingRow(row: RecordReading): string {
  const cells = [
    String(row.entry),
    time(row.at),
    row.section,
    row.is,
    valueCell(row),
    row.bands.join(' or '),
    row.expected,
    verdictCell(row),
  ];
  return `| ${cells.map(literal).join(' | ')} |`;
}
