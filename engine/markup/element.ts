/** An element of XML or HTML as a value. Text is text: it is escaped when the whole is printed, so nothing that
 *  an author wrote can become markup. */
export interface Element {
  readonly tag: string;
  readonly attributes: Attributes;
  readonly children: readonly (Element | string)[];
}

/** What is undefined or false is left out; true is an attribute without a value. */
export type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** What may stand inside an element; null and false are nothing. */
export type Child = Element | string | null | false | readonly Child[];

export function element(tag: string, attributes: Attributes = {}, ...children: readonly Child[]): Element {
  return { tag, attributes, children: children.flatMap(flat) };
}

function flat(child: Child): readonly (Element | string)[] {
  if (child === null || child === false || child === '') return [];
  return Array.isArray(child) ? child.flatMap(flat) : [child as Element | string];
}
