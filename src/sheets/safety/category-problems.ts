import type { Problem } from '../../quantity/problem.ts';
import { year } from './bounds.ts';
import { type Category, coverageClass, reaches } from './classes.ts';

/** What a category asks at least: coverage as a share, lifetime in years. */
const asks: Readonly<Record<Category, { readonly coverage: number; readonly lifetime: number }>> = {
  B: { coverage: 0, lifetime: 3 },
  '1': { coverage: 0, lifetime: 30 },
  '2': { coverage: 0.6, lifetime: 3 },
  '3': { coverage: 0.6, lifetime: 3 },
  '4': { coverage: 0.99, lifetime: 30 },
};

export interface CategoryInputs {
  readonly category: Category;
  readonly coverage: number;
  readonly lifetime: number;
}

/** A problem for each thing that a category asks and does not get: ISO 13849-1:2006 table 7 has no field there. */
export const categoryProblems = ({ category, coverage, lifetime }: CategoryInputs): readonly Problem[] => {
  const asked = asks[category];
  return [
    ...(reaches(coverage, asked.coverage)
      ? []
      : [
          {
            code: 'CATEGORY_COVERAGE',
            path: 'coverage',
            given: coverage,
            allowed: `>= ${100 * asked.coverage} %`,
            parts: { category },
          },
        ]),
    ...(reaches(lifetime, asked.lifetime * year)
      ? []
      : [
          {
            code: 'CATEGORY_LIFETIME',
            path: 'lifetime',
            given: lifetime,
            allowed: `>= ${asked.lifetime} y`,
            parts: { category },
          },
        ]),
  ];
};

/** Coverage of 99 % earns nothing more in categories 2 and 3: their columns end at medium. */
export const coverageCountedLess = ({ category, coverage }: CategoryInputs): boolean =>
  (category === '2' || category === '3') && coverageClass(coverage) === 'high';
/** Coverage in categories B and 1 earns nothing. */
export const coverageNotCounted = ({ category, coverage }: CategoryInputs): boolean =>
  (category === 'B' || category === '1') && coverage > 0;
