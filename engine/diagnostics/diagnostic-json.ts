import type { Span } from '../model/span.ts';
import { describe } from './describe.ts';
import type { Diagnostic, DiagnosticFacts, Severity } from './diagnostic.ts';
import { columnOf, lineOf } from './line-and-column.ts';

/** A place for people and for programs: lines and columns from 1, offsets from 0, all in UTF-16 units. */
export interface PlaceJson {
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly from: number;
  readonly to: number;
}

/** One problem as `check --json` prints it; see schema/diagnostic.schema.json. */
export interface DiagnosticJson extends PlaceJson {
  readonly file: string;
  readonly severity: Severity;
  readonly code: DiagnosticFacts['code'];
  readonly wrong: string;
  readonly mend: string;
  /** What the sentences were made of. */
  readonly facts: Readonly<Record<string, unknown>>;
  readonly related?: PlaceJson;
  readonly fix?: {
    readonly title: string;
    readonly edits: readonly (PlaceJson & { readonly insert: string })[];
  };
}

export function diagnosticJson(file: string, text: string, diagnostic: Diagnostic): DiagnosticJson {
  const { code, span, related, fix, ...facts } = diagnostic;
  const { severity, wrong, mend } = describe(diagnostic);
  return {
    file,
    ...placeJson(text, span),
    severity,
    code,
    wrong,
    mend,
    facts,
    ...(related && { related: placeJson(text, related) }),
    ...(fix && {
      fix: {
        title: fix.title,
        edits: fix.edits.map((edit) => ({ ...placeJson(text, edit), insert: edit.insert })),
      },
    }),
  };
}

const placeJson = (text: string, { from, to }: Span): PlaceJson => ({
  line: lineOf(text, from).number,
  column: columnOf(text, from),
  endLine: lineOf(text, to).number,
  endColumn: columnOf(text, to),
  from,
  to,
});
