/** What is made of short texts, kept from one round to the next. A text that a round does not ask for is forgotten after
 *  the one that follows. */
export class KeptTexts<T> {
  private readonly make: (text: string) => T;
  private now = new Map<string, T>();
  private before = new Map<string, T>();

  constructor(make: (text: string) => T) {
    this.make = make;
  }

  /** A new round begins. */
  turn(): void {
    this.before = this.now;
    this.now = new Map();
  }

  of(text: string): T {
    const kept = this.now.get(text) ?? this.before.get(text) ?? this.make(text);
    this.now.set(text, kept);
    return kept;
  }
}
