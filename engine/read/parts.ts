import type { Block, Hazard } from '../model/prose.ts';
import type { Span } from '../model/span.ts';
import type { Lead } from './leads/lead-line.ts';
import type { OutcomeSyntax } from './section-syntax.ts';

/** A block of a section, sorted by what it is for. */
export type Part =
  | { readonly kind: 'lead'; readonly lead: Lead; readonly span: Span }
  | { readonly kind: 'hazard'; readonly hazard: Hazard; readonly span: Span }
  | { readonly kind: 'outcomes'; readonly outcomes: readonly OutcomeSyntax[]; readonly span: Span }
  | { readonly kind: 'prose'; readonly block: Block; readonly span: Span };

export type PartOf<Kind extends Part['kind']> = Extract<Part, { readonly kind: Kind }>;
