/** Rows of words in columns, two spaces apart, each line with its indent. */
export function columns(rows: readonly (readonly string[])[], indent = '  '): string {
  const widths = (rows[0] ?? []).map((_, at) => Math.max(...rows.map((row) => [...(row[at] ?? '')].length)));
  return rows
    .map(
      (row) =>
        indent +
        row
          .map((word, at) => pad(word, widths[at] ?? 0))
          .join('  ')
          .trimEnd(),
    )
    .join('\n');
}

const pad = (word: string, width: number): string => word + ' '.repeat(width - [...word].length);
