import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { operationsInYear, operationsToFail, year } from './bounds.ts';
import { always, guardingCaution } from './caution.ts';
import { iso13849 } from './sources.ts';

export const failureCounts = ['dangerous', 'all'] as const;
export type FailureCount = (typeof failureCounts)[number];

/** Share that has failed at B10d. */
const tenth = 0.1;
/** Time for which ISO 13849-1 lets a control be used; a part that is worn before is replaced. */
const missionTime = 20 * year;

/**
 * Operations until one part in ten has failed dangerously.
 *
 * Method   B10d as given, or 2 B10 where only all failures are known: half of them dangerous
 * Symbols  B10  operations  count
 * Returns  operations
 * Cost     O(1)
 * Source   ISO 13849-1:2006 annex C
 */
export const dangerousOperations = (operations: number, counted: FailureCount): number =>
  counted === 'dangerous' ? operations : 2 * operations;

interface PartLifetimeInputs {
  readonly operations: number;
  readonly counted: FailureCount;
  readonly inYear: number;
}

/**
 * Mean time to a dangerous failure of a part that wears by operations, and when it is replaced.
 *
 * Method   T10d = B10d/n_op,  MTTFd = T10d/0.1
 * Symbols  B10d  operations  count  until one in ten has failed dangerously
 *          n_op  inYear      count  a year
 * Returns  lifetime and replacement, s
 * Assumes  failures come at a constant rate until T10d
 * Cost     O(1)
 * Source   ISO 13849-1:2006 annex C
 */
export const partLifetime = ({ operations, counted, inYear }: PartLifetimeInputs) => {
  const dangerous = dangerousOperations(operations, counted);
  const replacement = (dangerous / inYear) * year;
  return { dangerous, lifetime: replacement / tenth, replacement };
};

export const partLifetimeSheet = defineSheet({
  id: 'safety/part-lifetime',
  version: 1,
  inputs: {
    operations: numberField('count', 'B_{10}', operationsToFail),
    counted: choiceField<FailureCount>('\\text{failures}', failureCounts),
    inYear: numberField('count', 'n_{op}', operationsInYear),
  },
  outputs: {
    dangerous: numberField('count', 'B_{10d}'),
    lifetime: numberField('lifetime', 'MTTF_d'),
    replacement: numberField('lifetime', 'T_{10d}'),
  },
  formula: [
    'B_{10d} = B_{10} \\text{ of the dangerous, } 2 B_{10} \\text{ of all failures}',
    'MTTF_d = \\frac{B_{10d}}{0.1\\, n_{op}}, \\quad T_{10d} = \\frac{B_{10d}}{n_{op}}',
  ],
  limits: [
    guardingCaution,
    { code: 'PART_REPLACED_EARLY', broken: (_, { replacement }) => replacement < missionTime * (1 - 1e-9) },
    { code: 'PART_HALF_DANGEROUS', broken: ({ counted }) => counted === 'all' },
    always('PART_FROM_ITS_MAKER'),
  ],
  sources: [iso13849],
  compute: partLifetime,
});
