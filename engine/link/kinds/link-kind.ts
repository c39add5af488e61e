import type { Section } from '../../model/section.ts';
import type { Span } from '../../model/span.ts';
import type { SectionSyntax } from '../../read/section-syntax.ts';
import type { LinkContext } from '../link-context.ts';
import type { Values } from '../resolve-values.ts';

/** What linking makes of one kind of section. */
export interface Made {
  readonly section: Section;
  readonly sound: boolean;
  readonly outcomeSpans?: readonly Span[];
  readonly faultSpans?: readonly Span[];
  readonly end?: string;
  /** What the sections of the procedure that is followed here are linked by. */
  readonly inside?: LinkContext;
}

/** What every section has. */
export type Base = Pick<Section, 'id' | 'title' | 'hazards' | 'blocks'>;

/** A section whose names are looked up. */
export interface Linking<Syntax> {
  readonly syntax: Syntax;
  readonly base: Base;
  /** Where the section begins: its offsets count from here. */
  readonly from: number;
  readonly values: Values;
  readonly context: LinkContext;
}

export type SyntaxOf<Kind> = Extract<SectionSyntax, { readonly kind: Kind }>;

/** One kind of section; null where nothing can be made of it. */
export type LinkKind<Kind extends SectionSyntax['kind']> = (linking: Linking<SyntaxOf<Kind>>) => Made | null;
