import type { Fix } from '../diagnostics/diagnostic.ts';
import type { Span } from '../model/span.ts';

/** The fix where only one word can be meant, and the wrong one stands there without quotes. */
export function renameFix(span: Span, written: string, near: readonly string[]): { readonly fix?: Fix } {
  const [only] = near;
  if (only === undefined || near.length > 1 || span.to - span.from !== written.length) return {};
  return { fix: { title: `Write "${only}"`, edits: [{ from: span.from, to: span.to, insert: only }] } };
}
