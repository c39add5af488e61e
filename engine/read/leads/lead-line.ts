import type { Inline } from '../../model/prose.ts';
import type { Span } from '../../model/span.ts';
import type { PhrasingContent } from '../../parse/parse-body.ts';
import type { Named } from '../named.ts';
import type { ReadContext } from '../read-context.ts';
import type {
  CallSyntax,
  ConditionPair,
  LinkSyntax,
  MadeKind,
  OnlyIfSyntax,
  ProofName,
} from '../section-syntax.ts';

interface NamesLead<Word> {
  readonly word: Word;
  readonly names: readonly Named[];
}

/** What a lead line says. */
export type Lead =
  | NamesLead<'Read'>
  | NamesLead<'Fault'>
  | NamesLead<'End'>
  | { readonly word: 'Prove'; readonly names: readonly ProofName[] }
  | {
      readonly word: 'Do';
      readonly task: readonly Inline[];
      readonly minutes: number | null;
      readonly wait: number;
      readonly sets: readonly ConditionPair[];
    }
  | {
      readonly word: 'Follow';
      /** Its file is null where it leads to a section of this file. */
      readonly procedure: LinkSyntax & { readonly title: string };
      readonly given: CallSyntax['given'];
    }
  | { readonly word: 'Only if'; readonly clauses: OnlyIfSyntax['clauses'] }
  | { readonly word: 'Then'; readonly link: LinkSyntax }
  | { readonly word: 'Stop'; readonly reason: readonly Inline[] };

export type LeadWord = Lead['word'];
export type LeadOf<Word extends LeadWord> = Extract<Lead, { readonly word: Word }>;

/** A paragraph, or a line that was cut out of one. */
export interface Piece {
  readonly nodes: readonly PhrasingContent[];
  /** As it is written. */
  readonly text: string;
  readonly span: Span;
}

/** One kind of lead line: a row of the table in `index.ts`. */
export interface LeadLine {
  readonly word: LeadWord;
  /** How it is written, for messages. */
  readonly form: string;
  /** The kind of section it makes, or the lead lines of which it completes one. */
  readonly makes: MadeKind | null;
  readonly completes: readonly LeadWord[];
  /** How a line begins that can hardly be anything else, even in the middle of a paragraph. */
  readonly begins: RegExp;
  /** What the piece says if it is this lead line and nothing else, else null. */
  read(piece: Piece, context: ReadContext): Lead | null;
  /** Whether somebody may have meant this lead line; `instead` is the right form where it is certain. */
  near(text: string): { readonly instead: string | null } | null;
}
