/** What practice keeps on this device: a text for each name. */
export interface PracticeShelf {
  names(): readonly string[];
  read(name: string): string | null;
  /** False where the browser refuses: no room left, or a private window. */
  write(name: string, text: string): boolean;
  remove(name: string): void;
}
