import { choiceField, listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { listLengths } from '../list-lengths.ts';
import { coverages, lifetimes } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { type CoverageClass, coverageClass, coverageClasses } from './classes.ts';
import { iso13849 } from './sources.ts';

/**
 * Average diagnostic coverage of the parts of a control.
 *
 * Method   DC = sum(DC_i/M_i)/sum(1/M_i)
 * Symbols  DC_i  shares  [n]  of dangerous failures that are found
 *          M_i   parts   [n]  s
 * Returns  share
 * Assumes  parts of all channels, also those without a test (0); parts with an excluded fault are left out
 * Cost     O(n)
 * Source   ISO 13849-1:2006 annex E
 */
export const averageCoverage = (shares: readonly number[], parts: readonly number[]): number =>
  parts.reduce((sum, lifetime, i) => sum + shares[i]! / lifetime, 0) /
  parts.reduce((sum, lifetime) => sum + 1 / lifetime, 0);

interface AverageCoverageInputs {
  readonly shares: readonly number[];
  readonly parts: readonly number[];
}

export const averageCoverageSheet = defineSheet({
  id: 'safety/average-coverage',
  version: 1,
  inputs: {
    shares: listField('ratio', 'DC_i', coverages),
    parts: listField('lifetime', 'M_i', lifetimes),
  },
  outputs: {
    coverage: numberField('ratio', 'DC'),
    coverageClass: choiceField<CoverageClass>('\\text{class}', coverageClasses),
  },
  formula: ['DC = \\frac{\\sum_i DC_i / M_i}{\\sum_i 1 / M_i}'],
  limits: [guardingCaution, always('COVERAGE_ALL_PARTS')],
  sources: [iso13849],
  check: ({ shares, parts }) => listLengths({ shares, parts }),
  compute: ({ shares, parts }: AverageCoverageInputs) => {
    const coverage = averageCoverage(shares, parts);
    return { coverage, coverageClass: coverageClass(coverage) };
  },
});
