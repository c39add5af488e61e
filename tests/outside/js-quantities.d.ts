declare module 'js-quantities' {
  /** The part of the library that the tests compare with. */
  interface Qty {
    readonly scalar: number;
    to(unit: string): Qty;
  }
  const Qty: {
    (value: number, unit: string): Qty;
    parse(text: string): Qty | null;
  };
  export default Qty;
}
