/** A name, and where it stands in the text of its section. */
export interface Named {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}
