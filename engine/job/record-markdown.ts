import type { JobRecord, RecordReading, RecordRemedy } from '../model/record.ts';

/** Who the page is for: the owner's copy fits one page, the bench copy has every reading. */
export type Audience = 'owner' | 'bench';

/** The record as a Markdown page. */
export function recordMarkdown(record: JobRecord, audience: Audience): string {
  const parts = [
    `# ${literal(record.board || 'Board')}: ${outcomeWords[record.outcome]}`,
    heading(record),
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
      'Ruled out',
      record.ruledOut.map(({ is, by }) => `- ${literal(is)}, by ${literal(by)}`),
    ),
    part(
      'Notes',
      record.notes.map(({ at, text }) => `- ${time(at)}: ${literal(text)}`),
    ),
    `Walked with "${literal(record.tree.title)}" (${record.tree.id}, ${record.tree.digest.slice(0, 12)}), job ${literal(record.job)}.`,
  ];
}

function readingRow(row: RecordReading): string {
  const mark = row.mark === null ? '' : `, ${row.mark}`;
  const cells = [
    String(row.entry),
    time(row.at),
    row.section,
    row.is,
    `${row.value}${mark}`,
    row.bands.join(' or '),
    row.expected,
    row.aside ?? row.verdict,
  ];
  return `| ${cells.map(literal).join(' | ')} |`;
}
