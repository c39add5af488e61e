/** Files that leave the browser and come into it. */
export interface Files {
  save(name: string, type: string, text: string): void;
  /** Asks for one file; null when none was chosen. */
  open(accept: string): Promise<{ readonly name: string; readonly text: string } | null>;
}
