import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { HandOver } from './link-context.ts';
import type { Aspect, LinkedSection } from './linked-tree.ts';

/** What linking makes of one section, and all that it finds on the way; places count from the section's start. */
export interface LinkedHere {
  readonly linked: LinkedSection | null;
  readonly diagnostics: readonly Diagnostic[];
  readonly open: ReadonlySet<Aspect>;
  readonly settingsUsed: ReadonlySet<string>;
  readonly handOvers: ReadonlyMap<string, HandOver>;
}
