/** So many tries, and how many of them worked. */
export interface Count {
  readonly good: number;
  readonly of: number;
}

/** What a proof by counting still needs: all of `wanted` tries must work; null where it is decided. */
export function proofLeft({ good, of }: Count, wanted: number): string | null {
  if (good < of || of >= wanted) return null;
  return of === 0 ? `${wanted} in a row must work` : `${wanted - of} more must work`;
}

/** What a count still needs: `17 more without a failure settle it`; null where it is settled.
 *  @param enough so many alike in a row settle it */
export function triesLeft({ good, of }: Count, enough: number): string | null {
  const left = enough - of;
  if (of === 0) return `${enough} alike in a row settle it; one of each settles it at once`;
  if (left <= 0 || (good > 0 && good < of)) return null;
  const more = left === 1 ? '1 more' : `${left} more`;
  return good === of
    ? `${more} without a failure settle${left === 1 ? 's' : ''} it`
    : `${more} that fail${left === 1 ? 's' : ''} too settle${left === 1 ? 's' : ''} it`;
}

/** `3 of 10` in the field; nothing counted yet otherwise. */
export function countIn(typed: string): Count {
  const [, good = '0', of = '0'] = /^\s*(\d{1,4})\s*(?:of|\/)\s*(\d{1,4})\s*$/i.exec(typed) ?? [];
  return Number(good) <= Number(of) ? { good: Number(good), of: Number(of) } : { good: 0, of: 0 };
}
