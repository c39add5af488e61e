import type { Span } from '../../model/span.ts';
import type { Lead, LeadOf, LeadWord } from '../leads/lead-line.ts';
import type { Part } from '../parts.ts';
import type { ReadContext } from '../read-context.ts';
import type { MadeKind, SectionSyntax, UnknownSyntax } from '../section-syntax.ts';

/** What a section is made of, once its lead line is found. */
export interface Material<L extends Lead = Lead> {
  /** Everything that sections of all kinds have, all prose and hazards included. */
  readonly base: Omit<UnknownSyntax, 'kind'>;
  readonly lead: L;
  readonly leadSpan: Span;
  readonly parts: readonly Part[];
}

/** One kind of section: a row of the table in `index.ts`. */
export interface SectionKind<Word extends LeadWord = LeadWord> {
  readonly kind: MadeKind;
  readonly word: Word;
  /** It has a list of outcomes. */
  readonly branches: boolean;
  build(material: Material<LeadOf<Word>>, context: ReadContext): SectionSyntax;
}
