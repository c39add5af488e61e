/** Where a case must lead. */
export type CaseEnd =
  | { readonly kind: 'section'; readonly tree: string; readonly section: string }
  | { readonly kind: 'mended' };

/** One worked job: what was said in order, and where the tree must lead. */
export interface Case {
  /** The file's name without its ending. */
  readonly id: string;
  readonly title: string;
  /** Paths in the library. */
  readonly tree: string;
  readonly board: string | null;
  /** What is typed for settings; those not named have their usual value. */
  readonly settings: Readonly<Record<string, string>>;
  /** As a technician types them. */
  readonly answers: readonly string[];
  readonly leadsTo: CaseEnd;
}
