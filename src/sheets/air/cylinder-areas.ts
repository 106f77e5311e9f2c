import type { Problem } from '../../quantity/problem.ts';

/** Area of a round, m2. */
export const roundArea = (diameter: number): number => 0.25 * Math.PI * diameter * diameter;

/** Area between bore and rod, m2. */
export const ringArea = (bore: number, rod: number): number => 0.25 * Math.PI * (bore - rod) * (bore + rod);

/** A rod as thick as its bore or thicker. */
export const rodProblems = (bore: number, rod: number): Problem[] =>
  rod < bore ? [] : [{ code: 'CYLINDER_ROD', path: 'rod', given: rod, allowed: `< ${bore}` }];
