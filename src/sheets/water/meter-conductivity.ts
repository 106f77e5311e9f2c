import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';

export type MeterAnswer = 'counts' | 'ask the maker' | 'does not count';

/** Least conductivity that makers of magnetic meters usually print, and what one of them asks for water, S/m. */
export const usualLeast = 5e-4;
export const leastForWater = 20e-4;

/**
 * Whether a magnetic meter counts a water of a conductivity.
 *
 * Method   does not count below 5 uS/cm; ask the maker from there to 20 uS/cm; counts above. A limit of the
 *          meter's own paper goes before both
 * Symbols  kappa  conductivity  scalar  S/m
 *          own    ownLimit      scalar  S/m  0 where the paper is not at hand
 * Returns  a word
 * Cost     O(1)
 * Source   trade article on conductivity limits, March 2005
 */
export const meterAnswer = (conductivity: number, ownLimit: number): MeterAnswer => {
  if (ownLimit > 0) return conductivity >= ownLimit ? 'counts' : 'does not count';
  if (conductivity < usualLeast) return 'does not count';
  return conductivity < leastForWater ? 'ask the maker' : 'counts';
};

interface MeterConductivityInputs {
  readonly conductivity: number;
  readonly ownLimit: number;
}

export const meterConductivitySheet = defineSheet({
  id: 'water/meter-conductivity',
  version: 1,
  inputs: {
    conductivity: numberField('conductivity', '\\kappa', { least: 0, most: 100 }),
    ownLimit: numberField('conductivity', '\\kappa_m', { least: 0, most: 10, assumed: 0 }),
  },
  outputs: {
    usualRatio: numberField('ratio', 'r_5'),
    waterRatio: numberField('ratio', 'r_{20}'),
    answer: choiceField<MeterAnswer>('\\text{answer}', ['counts', 'ask the maker', 'does not count']),
  },
  formula: [
    'r_5 = \\frac{\\kappa}{5\\ \\mathrm{\\mu S/cm}}, \\quad r_{20} = \\frac{\\kappa}{20\\ \\mathrm{\\mu S/cm}}',
    '\\text{counts if } \\kappa \\ge \\kappa_m; \\text{ without } \\kappa_m \\text{ if } r_{20} \\ge 1; \\text{ not if } r_5 < 1',
  ],
  limits: [
    { code: 'METER_NO_COUNT', broken: (_, { answer }) => answer === 'does not count' },
    { code: 'METER_ASK', broken: (_, { answer }) => answer === 'ask the maker' },
    { code: 'METER_LIMITS_DIFFER', broken: ({ ownLimit }) => ownLimit === 0 },
    {
      code: 'METER_OWN_LIMIT_ODD',
      broken: ({ ownLimit }) => ownLimit > 0 && ownLimit < usualLeast,
    },
    { code: 'METER_SITE_WATER', broken: () => true },
  ],
  sources: [{ title: 'trade article on conductivity limits of meters', edition: 'March 2005', mark: 'read' }],
  compute: ({ conductivity, ownLimit }: MeterConductivityInputs) => ({
    usualRatio: conductivity / usualLeast,
    waterRatio: conductivity / leastForWater,
    answer: meterAnswer(conductivity, ownLimit),
  }),
});
