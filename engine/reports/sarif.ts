import type { Diagnostic, Severity } from '../diagnostics/diagnostic.ts';
import { type DiagnosticJson, diagnosticJson } from '../diagnostics/diagnostic-json.ts';
import { uriOf } from './uri-of.ts';

/** One file and everything there is to say about it. */
export interface CheckedFile {
  /** As it was named, with `/` or `\` between folders. */
  readonly path: string;
  readonly text: string;
  readonly diagnostics: readonly Diagnostic[];
}

export interface SarifOptions {
  /** Of this program. */
  readonly version: string;
  /** The absolute address of the page on which every code is explained. */
  readonly helpUri: string;
}

const levels: Readonly<Record<Severity, string>> = { error: 'error', warning: 'warning', hint: 'note' };

type Place = Pick<DiagnosticJson, 'line' | 'column' | 'endLine' | 'endColumn' | 'from' | 'to'>;

/** Diagnostics as a SARIF 2.1.0 log (OASIS standard): one rule for each code that was met, places in lines and columns
 *  from 1, columns in UTF-16 units. */
export function sarifOf(files: readonly CheckedFile[], options: SarifOptions): string {
  const results = files.flatMap(({ path, text, diagnostics }) =>
    diagnostics.map((diagnostic) => diagnosticJson(path, text, diagnostic)),
  );
  const rules = [...new Map(results.toReversed().map((result) => [result.code, result])).values()].toSorted(
    (a, b) => (a.code < b.code ? -1 : 1),
  );
  const indexes = new Map(rules.map(({ code }, index) => [code, index]));
  const log = {
    $schema: 'https://json.schemastore.org/sarif-2.1.0.json',
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: {
            name: 'deadboard',
            semanticVersion: options.version,
            rules: rules.map((first) => ruleOf(first, options.helpUri)),
          },
        },
        columnKind: 'utf16CodeUnits',
        newlineSequences: ['\r\n', '\n', '\r'],
        artifacts: files.map(({ path }) => ({ location: { uri: uriOf(path) }, mimeType: 'text/markdown' })),
        results: results.map((result) => ({
          ruleId: result.code,
          ruleIndex: indexes.get(result.code),
          ...resultOf(result),
        })),
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

/** @param first the first result of this code: its sentences stand for the kind */
const ruleOf = ({ code, severity, wrong, mend }: DiagnosticJson, helpUri: string) => ({
  id: code,
  shortDescription: { text: sentence(code.replaceAll('-', ' ')) },
  help: { text: `For example: ${sentence(wrong)} ${sentence(mend)}` },
  helpUri,
  defaultConfiguration: { level: levels[severity] },
});

function resultOf({ file, severity, wrong, mend, related, fix, ...place }: DiagnosticJson) {
  const artifactLocation = { uri: uriOf(file) };
  return {
    level: levels[severity],
    message: { text: `${sentence(wrong)} ${sentence(mend)}` },
    locations: [{ physicalLocation: { artifactLocation, region: regionOf(place) } }],
    ...(related && {
      relatedLocations: [
        {
          physicalLocation: { artifactLocation, region: regionOf(related) },
          message: { text: 'This belongs to it.' },
        },
      ],
    }),
    ...(fix && {
      fixes: [
        {
          description: { text: sentence(fix.title) },
          artifactChanges: [
            {
              artifactLocation,
              replacements: fix.edits.map((edit) => ({
                deletedRegion: regionOf(edit),
                insertedContent: { text: edit.insert },
              })),
            },
          ],
        },
      ],
    }),
  };
}

const regionOf = ({ line, column, endLine, endColumn, from, to }: Place) => ({
  startLine: line,
  startColumn: column,
  endLine,
  endColumn,
  charOffset: from,
  charLength: to - from,
});

const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
