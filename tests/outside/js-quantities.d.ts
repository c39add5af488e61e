declare module 'js-quantities' {
  /** The part of the library that the tests compare with. */
  interface Qty {
    readonly scalar: number;
    to(unit: string): Qty;
    add(other: Qty): Qty;
    sub(other: Qty): Qty;
    mul(other: Qty | number): Qty;
    div(other: Qty): Qty;
    lt(other: Qty): boolean;
    gt(other: Qty): boolean;
  }
  const Qty: {
    (value: number, unit: string): Qty;
    parse(text: string): Qty | null;
  };
  export default Qty;
}
