import type { Answer } from './answer.ts';
import type { Session } from './session.ts';

/** One way to write an answer. `pattern` must match the whole text; case does not matter. */
export interface AnswerForm {
  readonly pattern: RegExp;
  readonly example: string;
  /** Null where the text is no answer to what is asked. */
  readonly read: (parts: readonly string[], session: Session) => Answer | null;
}

export const form = (pattern: string, example: string, read: AnswerForm['read']): AnswerForm => ({
  pattern: new RegExp(`^\\s*${pattern}\\s*$`, 'iu'),
  example,
  read,
});

/** A setting's name, in code marks or not. */
export const settingName = '`?([\\p{L}_][\\p{L}\\p{N}_-]*)`?';

/** A reading's name; one of a procedure is `r_gnd of v5, 10 Ω`. */
export const readingName =
  '(?:`(?=[^`]+`))?((?<=`)[^`]+(?=`)|[\\p{L}_][\\p{L}\\p{N}_-]*(?: of [^=`]*[^=`\\s])?)`?';

export const trimmed = (text: string | undefined): string => text?.trim() ?? '';
