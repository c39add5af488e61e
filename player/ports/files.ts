interface TakenFile {
  readonly name: string;
  readonly text: string;
}

/** Files that leave the browser and come into it. */
export interface Files {
  save(name: string, type: string, text: string): void;
  /** Asks for one file; null when none was chosen. */
  open(accept: string): Promise<TakenFile | null>;
  /** Asks for any number of files; none where none were chosen. */
  openAll(accept: string): Promise<readonly TakenFile[]>;
}
