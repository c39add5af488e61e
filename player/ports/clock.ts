/** The bench's clock. */
export interface Clock {
  /** Now, ISO 8601 with the bench's own offset: `2031-04-05T18:30:00+02:00`. */
  now(): string;
  /** Calls back about once in `seconds`, until the returned function is called. */
  every(seconds: number, tick: () => void): () => void;
  /** Calls back once what is due has been drawn and nothing else waits. */
  idle(work: () => void): void;
}
