import type { TreeFacts } from '../model/tree-facts.ts';
import type { SectionSyntax } from '../read/section-syntax.ts';
import type { Beside } from './beside.ts';
import type { LinkedHere } from './linked-here.ts';
import type { LinkedSection } from './linked-tree.ts';

interface Kept {
  readonly here: LinkedHere;
  /** Where the section was when it was last placed: most stay where they are when one is edited. */
  from: number;
  placed: LinkedSection | null;
}

/** What linking made of sections before: it holds for as long as the facts, the other sections' slugs and the files
 *  beside are the same. */
export class KeptLinks {
  private facts: TreeFacts | null = null;
  private slugs = '';
  private files: object | null = null;
  private linked = new WeakMap<SectionSyntax, Kept>();

  /** A file is linked: forgets everything where it would come out otherwise now. */
  begin(facts: TreeFacts, slugs: readonly string[], { files }: Beside): void {
    const all = slugs.join('\n');
    if (facts === this.facts && all === this.slugs && files === this.files) return;
    this.facts = facts;
    this.slugs = all;
    this.files = files;
    this.linked = new WeakMap();
  }

  get(syntax: SectionSyntax): Kept | undefined {
    return this.linked.get(syntax);
  }

  keep(syntax: SectionSyntax, here: LinkedHere): void {
    this.linked.set(syntax, { here, from: -1, placed: null });
  }
}
