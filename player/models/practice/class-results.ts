import { type ReadonlySignal, signal } from '@preact/signals';
import type { Ports } from '../../ports/ports.ts';
import type { ClassRow } from './class-row.ts';
import { rowOfResult } from './row-of-result.ts';

/** The results of a class, taken in from files. */
export interface ClassResults {
  readonly rows: ReadonlySignal<readonly ClassRow[]>;
  /** What became of the files that were taken in last. */
  readonly said: ReadonlySignal<string>;
  takeIn(): Promise<void>;
  /** As CSV (RFC 4180). */
  saveTable(): void;
}

export function createClassResults({ files, clock }: Ports): ClassResults {
  const rows = signal<readonly ClassRow[]>([]);
  const said = signal('');
  return {
    rows,
    said,
    async takeIn() {
      const chosen = await files.openAll('.json,application/json');
      if (chosen.length === 0) return;
      const read = chosen.map(({ name, text }) => ({ name, read: rowOfResult(text) }));
      const taken = read.flatMap((one) => (one.read.ok ? [one.read.value] : []));
      const refused = read.flatMap((one) => (one.read.ok ? [] : [`"${one.name}": ${one.read.why}`]));
      rows.value = [...rows.value, ...taken].sort((a, b) => a.name.localeCompare(b.name));
      said.value = [
        `${taken.length} of ${chosen.length} taken in`,
        ...(refused.length > 0 ? [`Not taken in: ${refused.join('; ')}`] : []),
      ].join('. ');
    },
    saveTable() {
      const day = clock.now().slice(0, 10);
      files.save(`class-${day}.csv`, 'text/csv', classCsv(rows.value));
    },
  };
}

const columns: readonly (readonly [string, (row: ClassRow) => string | number])[] = [
  ['name', ({ name }) => name],
  ['code', ({ code }) => code],
  ['found', ({ found }) => (found ? 'yes' : 'no')],
  ['right at first', ({ rightAtFirst }) => (rightAtFirst ? 'yes' : 'no')],
  ['minutes', ({ minutes }) => minutes],
  ['hints', ({ hints }) => hints],
  ['warnings passed over', ({ passed }) => passed],
  ['harm', ({ harm }) => harm],
];

/** A table for a spreadsheet: RFC 4180, one trainee a line. A name never becomes a formula there. */
export function classCsv(rows: readonly ClassRow[]): string {
  const lines = [
    columns.map(([head]) => head),
    ...rows.map((row) => columns.map(([, of]) => String(of(row)))),
  ];
  return `${lines.map((line) => line.map(cell).join(',')).join('\r\n')}\r\n`;
}

function cell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
