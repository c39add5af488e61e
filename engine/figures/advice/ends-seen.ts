/** Which ends walks come to on which the same was seen. */
export class EndsSeen {
  readonly #ends = new Map<string, string | null>();

  note(seen: string, end: string): void {
    const known = this.#ends.get(seen);
    this.#ends.set(seen, known === undefined || known === end ? end : null);
  }

  /** Whether all of them end alike. */
  areOne(seen: string): boolean {
    return (this.#ends.get(seen) ?? null) !== null;
  }
}
