interface Kept<T> {
  readonly text: string;
  readonly made: T;
}

/** What is made of the texts that a file is cut into, kept from one round to the next. They are asked for in their order,
 *  so what was made of a text mostly lies where the last one was found; one text may be another without the rest being
 *  looked for. */
export class KeptTexts<T> {
  private readonly make: (text: string) => T;
  private now: Kept<T>[] = [];
  private before: readonly Kept<T>[] = [];
  /** Where the next text should lie. */
  private at = 0;
  private misses = 0;
  private places: ReadonlyMap<string, number> | null = null;

  constructor(make: (text: string) => T) {
    this.make = make;
  }

  /** A new round begins: what the last one did not ask for is forgotten. */
  turn(): void {
    this.before = this.now;
    this.now = [];
    this.at = 0;
    this.misses = 0;
    this.places = null;
  }

  of(text: string): T {
    const place = this.placeOf(text);
    const made = place === null ? this.make(text) : (this.before[place] as Kept<T>).made;
    if (place !== null) this.at = place + 1;
    this.now.push({ text, made });
    return made;
  }

  private placeOf(text: string): number | null {
    for (const place of [this.at, this.at + 1]) if (this.before[place]?.text === text) return place;
    this.misses += 1;
    if (this.misses === 1) return null;
    this.places ??= new Map(this.before.map((kept, place) => [kept.text, place]));
    return this.places.get(text) ?? null;
  }
}
