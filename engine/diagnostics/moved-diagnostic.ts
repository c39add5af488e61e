import type { Span } from '../model/span.ts';
import type { Diagnostic } from './diagnostic.ts';

/** A problem of a part of a file, moved to where that part begins. */
export function movedDiagnostic(diagnostic: Diagnostic, by: number): Diagnostic {
  const moved = ({ from, to }: Span): Span => ({ from: from + by, to: to + by });
  return placedDiagnostic(diagnostic, moved) as Diagnostic;
}

/** The same problem with each of its places where `place` says; null where that does not know one of them. */
export function placedDiagnostic(
  diagnostic: Diagnostic,
  place: (span: Span) => Span | null,
): Diagnostic | null {
  const { related, fix } = diagnostic;
  const span = place(diagnostic.span);
  const other = related && place(related);
  const edits = fix?.edits.map((edit) => ({ edit, span: place(edit) }));
  if (span === null || other === null || edits?.some((each) => each.span === null)) return null;
  return {
    ...diagnostic,
    span,
    ...(other && { related: other }),
    ...(fix && edits && { fix: { ...fix, edits: edits.map(({ edit, span }) => ({ ...edit, ...span })) } }),
  };
}
