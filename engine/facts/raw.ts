/** A table of the front-matter; whatever has the wrong shape has been reported before. */
export type RawTable = Readonly<Record<string, unknown>>;

export const isTable = (value: unknown): value is RawTable =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const tableOf = (value: unknown): RawTable => (isTable(value) ? value : {});

/** A text with something in it. */
export const textOf = (value: unknown): string | null =>
  typeof value === 'string' && value !== '' ? value : null;

export const numberOf = (value: unknown): number | null => (typeof value === 'number' ? value : null);

export const listOf = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

export const textsOf = (value: unknown): readonly string[] =>
  listOf(value).flatMap((item) => textOf(item) ?? []);

/** One text, or a list of them. */
export const oneOrMore = (value: unknown): readonly string[] =>
  typeof value === 'string' ? textsOf([value]) : textsOf(value);
