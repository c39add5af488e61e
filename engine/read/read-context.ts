import type { BodyFacts } from '../diagnostics/body-facts.ts';
import type { Diagnostic, Fix } from '../diagnostics/diagnostic.ts';
import type { Span } from '../model/span.ts';
import type { Named } from './named.ts';
import type { LinkSyntax } from './section-syntax.ts';

/** What is gathered while one section is read. It lives no longer than that. */
export interface ReadContext {
  /** The section's text; every offset counts from its start. */
  readonly text: string;
  readonly diagnostics: Diagnostic[];
  readonly codes: Named[];
  readonly braces: Named[];
  readonly links: LinkSyntax[];
}

export const readContext = (text: string): ReadContext => ({
  text,
  diagnostics: [],
  codes: [],
  braces: [],
  links: [],
});

export function report(context: ReadContext, facts: BodyFacts, span: Span, fix?: Fix): void {
  context.diagnostics.push({ ...facts, span, ...(fix && { fix }) });
}

/** A fix that puts `insert` in the place of `span`. */
export const replacing = (title: string, span: Span, insert: string): Fix => ({
  title,
  edits: [{ from: span.from, to: span.to, insert }],
});
