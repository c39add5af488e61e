import type { Span } from '../model/span.ts';
import type { Diagnostic } from './diagnostic.ts';

/** A problem of a part of a file, moved to where that part begins. */
export function movedDiagnostic(diagnostic: Diagnostic, by: number): Diagnostic {
  const moved = <Place extends Span>(place: Place): Place => ({
    ...place,
    from: place.from + by,
    to: place.to + by,
  });
  const { span, related, fix } = diagnostic;
  return {
    ...diagnostic,
    span: moved(span),
    ...(related && { related: moved(related) }),
    ...(fix && { fix: { ...fix, edits: fix.edits.map(moved) } }),
  };
}
