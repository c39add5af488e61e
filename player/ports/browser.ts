/** The rest of the browser that models touch. */
export interface Browser {
  print(): void;
  /** Asks that this site's data be kept when room runs short; the answer may be no. */
  askToKeepData(): void;
  /** A new name for a job, unlike any other. */
  newId(): string;
  /** A number that nobody can foresee, 0 .. 2^32 − 1: which board a drill hides. */
  newSeed(): number;
  /** The whole address of a place, to be handed on. */
  addressOf(place: string): string;
  /** Puts a text where it can be pasted from; false where the browser does not let it. */
  copy(text: string): Promise<boolean>;
  /** Present place: what stands behind `#`. */
  place(): string;
  go(place: string, how: 'push' | 'replace'): void;
  onPlace(hear: (place: string) => void): () => void;
  online(): boolean;
}
