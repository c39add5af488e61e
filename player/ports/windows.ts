/** What one window tells the others: this job now holds so many entries. */
export interface Moved {
  readonly job: string;
  readonly entries: number;
}

/** The other windows of the same bench. */
export interface Windows {
  tell(moved: Moved): void;
  listen(hear: (moved: Moved) => void): () => void;
}
