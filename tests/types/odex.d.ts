/**
 * The part of the package that tests use. The package ships its source as TypeScript, which the compiler would
 * otherwise read, and refuse, under our stricter rules.
 */
export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number;
  relativeTolerance: number;
  maxSteps: number;
  solve(
    slope: (x: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[]; readonly outcome: number };
}
