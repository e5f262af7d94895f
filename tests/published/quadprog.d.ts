/** The one call of quadprog that the checks use; it ships no types. Arrays count from 1. */
declare module 'quadprog' {
  const quadprog: {
    solveQP(
      matrix: number[][],
      vector: number[],
      constraints: number[][],
      right: number[],
      equalities: number,
    ): { readonly solution: number[]; readonly message: string };
  };
  export default quadprog;
}
