/** The two calls of js-quantities that the unit checks use; it ships no types. */
declare module 'js-quantities' {
  interface Quantity {
    readonly scalar: number;
    to(unit: string): Quantity;
  }
  const Qty: (value: number, unit: string) => Quantity;
  export default Qty;
}
