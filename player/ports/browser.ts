/** The rest of the browser that models touch. */
export interface Browser {
  print(): void;
  /** Asks that this site's data be kept when room runs short; the answer may be no. */
  askToKeepData(): void;
  /** A new name for a job, unlike any other. */
  newId(): string;
  /** Present place: what stands behind `#`. */
  place(): string;
  go(place: string, how: 'push' | 'replace'): void;
  onPlace(hear: (place: string) => void): () => void;
  online(): boolean;
}
