import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { coverages, lifetimes } from './bounds.ts';
import {
  type CategoryInputs,
  categoryProblems,
  coverageCountedLess,
  coverageNotCounted,
} from './category-problems.ts';
import { always, guardingCaution } from './caution.ts';
import {
  type Category,
  type CoverageClass,
  categories,
  coverageClass,
  coverageClasses,
  type LifetimeClass,
  lifetimeClass,
  lifetimeClasses,
} from './classes.ts';
import { type Level, levels } from './levels.ts';
import { iso13849 } from './sources.ts';

type Column = readonly [low: Level | undefined, medium: Level | undefined, high: Level | undefined];

/** ISO 13849-1:2006 table 7, read: levels by lifetime low, medium, high; category, then coverage. */
const columns: Readonly<Record<string, Column>> = {
  B: ['a', 'b', undefined],
  '1': [undefined, undefined, 'c'],
  '2 low': ['a', 'b', 'c'],
  '2 medium': ['b', 'c', 'd'],
  '3 low': ['b', 'c', 'd'],
  '3 medium': ['c', 'd', 'd'],
  '4 high': [undefined, undefined, 'e'],
};

/** Column that a control counts in: none by coverage in B and 1, at most medium in 2 and 3. */
const columnOf = (category: Category, coverage: CoverageClass): Column => {
  if (category === 'B' || category === '1') return columns[category]!;
  if (category === '4') return columns['4 high']!;
  return columns[`${category} ${coverage === 'high' ? 'medium' : coverage}`]!;
};

/**
 * Performance level by the simplified procedure: classes alone, no numbers between.
 *
 * Method   table of levels by category, class of coverage, class of lifetime
 * Symbols  category  B, 1 to 4
 *          DC        coverage  scalar  share
 *          M         lifetime  scalar  s
 * Returns  a to e; none where the table has no field
 * Cost     O(1)
 * Source   ISO 13849-1:2006 table 7
 */
export const simplifiedLevel = (
  category: Category,
  coverage: CoverageClass,
  lifetime: LifetimeClass,
): Level | undefined => columnOf(category, coverage)?.[lifetimeClasses.indexOf(lifetime)];

export const simplifiedLevelSheet = defineSheet({
  id: 'safety/simplified-level',
  version: 1,
  inputs: {
    category: choiceField<Category>('\\text{category}', categories),
    coverage: numberField('ratio', 'DC', coverages),
    lifetime: numberField('lifetime', 'M', lifetimes),
  },
  outputs: {
    coverageClass: choiceField<CoverageClass>('\\text{class of } DC', coverageClasses),
    lifetimeClass: choiceField<LifetimeClass>('\\text{class of } M', lifetimeClasses),
    level: choiceField<Level>('PL', levels),
  },
  formula: ['PL = \\text{table}(\\text{category},\\ \\text{class of } DC,\\ \\text{class of } M)'],
  limits: [
    guardingCaution,
    { code: 'CATEGORY_COVERAGE_AS_MEDIUM', broken: (i) => coverageCountedLess(i) },
    { code: 'CATEGORY_COVERAGE_NOT_COUNTED', broken: (i) => coverageNotCounted(i) },
    always('LEVEL_NOT_NUMBER_ALONE'),
  ],
  sources: [iso13849],
  check: (i) => {
    const problems = categoryProblems(i);
    if (problems.length > 0) return problems;
    return simplifiedLevel(i.category, coverageClass(i.coverage), lifetimeClass(i.lifetime)) === undefined
      ? [{ code: 'CATEGORY_NO_FIELD', path: 'lifetime', given: i.lifetime, allowed: '< 30 y' }]
      : [];
  },
  compute: ({ category, coverage, lifetime }: CategoryInputs) => {
    const ofCoverage = coverageClass(coverage);
    const ofLifetime = lifetimeClass(lifetime);
    return {
      coverageClass: ofCoverage,
      lifetimeClass: ofLifetime,
      level: simplifiedLevel(category, ofCoverage, ofLifetime)!,
    };
  },
});
