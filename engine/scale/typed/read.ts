import type { Mark, Understood } from '../../model/observation.ts';

/** What was understood of a typed answer, before it is judged. */
export interface Read<As extends Understood = Understood> {
  readonly understood: As;
  readonly mark: Mark | null;
  /** Typed as the word `none`. */
  readonly none: boolean;
  /** What was assumed: `read as MHz`. */
  readonly remarks: readonly string[];
}
