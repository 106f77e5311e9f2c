import { listField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bottleTemperatures } from './bounds.ts';

/** Step between zones by design, K: 25 to 35 from trade habit (memory). */
export const designStep = 35;
/** Step of the usual test, hot to cold, K: 42 (read); some prove 50, another page says about 45. */
export const testStep = 42;

/**
 * Largest step of temperature that a bottle meets from one zone to the next.
 *
 * Method   max of T_{i+1} - T_i, or of T_i - T_{i+1}
 * Symbols  T  temperatures  [n]  K  in the order in which the bottle meets them, entry first
 *          sign  1 for rises, -1 for falls
 * Returns  K, 0 where there is none
 * Cost     O(n)
 * Source   definition
 */
export const largestStep = (temperatures: readonly number[], sign: 1 | -1): number => {
  let largest = 0;
  for (let i = 1; i < temperatures.length; i++) {
    largest = Math.max(largest, sign * (temperatures[i]! - temperatures[i - 1]!));
  }
  return largest;
};

export const glassShockSheet = defineSheet({
  id: 'heat/glass-shock',
  version: 1,
  inputs: { temperatures: listField('temperature', 'T_i', { ...bottleTemperatures, fewest: 2 }) },
  outputs: {
    largestRise: numberField('temperatureDifference', '\\Delta T_+'),
    largestFall: numberField('temperatureDifference', '\\Delta T_-'),
    designMargin: numberField('temperatureDifference', 'm_d'),
    testMargin: numberField('temperatureDifference', 'm_t'),
  },
  formula: [
    '\\Delta T_+ = \\max_i (T_{i+1} - T_i), \\quad \\Delta T_- = \\max_i (T_i - T_{i+1})',
    'm_d = 35\\ \\mathrm{K} - \\max(\\Delta T_+, \\Delta T_-), \\quad m_t = 42\\ \\mathrm{K} - \\Delta T_-',
  ],
  limits: [
    { code: 'GLASS_OVER_DESIGN', broken: (_, { designMargin }) => designMargin < -1e-9 },
    { code: 'GLASS_OVER_TEST', broken: (_, { testMargin }) => testMargin < -1e-9 },
    { code: 'GLASS_COLD_ENTRY', broken: () => true },
    { code: 'GLASS_LIMITS_DIFFER', broken: () => true },
  ],
  sources: [
    {
      title: 'public pages of a glass studio and of a packaging trader',
      place: 'thermal shock of soda-lime glass',
      mark: 'read',
    },
    { title: 'bottle washing trade', place: 'step of a zone', mark: 'memory' },
  ],
  compute: ({ temperatures }: { readonly temperatures: readonly number[] }) => {
    const largestRise = largestStep(temperatures, 1);
    const largestFall = largestStep(temperatures, -1);
    return {
      largestRise,
      largestFall,
      designMargin: designStep - Math.max(largestRise, largestFall),
      testMargin: testStep - largestFall,
    };
  },
});
