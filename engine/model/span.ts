/** A range of UTF-16 offsets in a whole file, front-matter included; `to` is exclusive. */
export interface Span {
  readonly from: number;
  readonly to: number;
}
