import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { coverages, lifetimes, year } from './bounds.ts';
import {
  type CategoryInputs,
  categoryProblems,
  coverageCountedLess,
  coverageNotCounted,
} from './category-problems.ts';
import { always, guardingCaution } from './caution.ts';
import { type Category, categories, coverageClass } from './classes.ts';
import { failureColumn, failureRow, isDoubtful, isRecalled, rateIn } from './failure-rate-table.ts';
import { type Level, levelOf, levels } from './levels.ts';
import { iso13849 } from './sources.ts';

const placed = ({ category, coverage, lifetime }: CategoryInputs) => {
  const row = failureRow(category, lifetime);
  return { row, column: failureColumn(category, coverageClass(coverage)) };
};

/**
 * Dangerous failures of a control by its category, its coverage and the lifetime of a channel.
 *
 * Method   column by category and class of coverage, row of the next lower lifetime
 * Symbols  M  lifetime  scalar  s  3 years or more
 * Returns  rate 1/s, the lifetime of the row s, level of the rate
 * Assumes  two like channels in categories 3 and 4, common cause scored, 20 years of use
 * Cost     O(rows)
 * Source   ISO 13849-1:2006 annex K
 */
export const failureRate = (i: CategoryInputs) => {
  const { row, column } = placed(i);
  const rate = rateIn(row, column);
  return { row: row.years * year, rate, level: levelOf(rate) };
};

export const failureRateSheet = defineSheet({
  id: 'safety/failure-rate',
  version: 1,
  inputs: {
    category: choiceField<Category>('\\text{category}', categories),
    coverage: numberField('ratio', 'DC', coverages),
    lifetime: numberField('lifetime', 'M', lifetimes),
  },
  outputs: {
    row: numberField('lifetime', 'M_k'),
    rate: numberField('failureRate', 'PFH_d'),
    level: choiceField<Level>('PL', levels),
  },
  formula: [
    'PFH_d = \\text{table}(\\text{category},\\ \\text{class of } DC,\\ M_k), \\quad M_k = \\max \\{ M_k : M_k \\le M \\}',
  ],
  limits: [
    guardingCaution,
    always('FAILURE_TABLE_INFORMATIVE'),
    {
      code: 'FAILURE_ROW_RECALLED',
      broken: (i) => isRecalled(placed(i).row.years, placed(i).column),
      parts: (i) => ({ years: placed(i).row.years }),
    },
    {
      code: 'FAILURE_ROW_DOUBTFUL',
      broken: (i) => isDoubtful(placed(i).row.years, placed(i).column),
    },
    { code: 'CATEGORY_COVERAGE_AS_MEDIUM', broken: (i) => coverageCountedLess(i) },
    { code: 'CATEGORY_COVERAGE_NOT_COUNTED', broken: (i) => coverageNotCounted(i) },
    always('LEVEL_NOT_NUMBER_ALONE'),
  ],
  sources: [
    { ...iso13849, place: 'annex K; public transcription, damaged in parts' },
    {
      title: 'ISO 13849-1',
      edition: '2006',
      place: 'annex K, rows that the transcription spoils',
      mark: 'memory',
    },
  ],
  check: categoryProblems,
  compute: failureRate,
});
