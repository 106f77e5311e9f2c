import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { normalFlows, vessels } from './bounds.ts';
import { normalPressure } from './dry-air.ts';

/**
 * How often a compressor loads that switches between two pressures.
 *
 * Method   f = x (1 - x) q_c p_n/(V dp),  x = q/q_c;  most at x = 1/2;  0 where it never unloads
 * Symbols  V    receiver  scalar  m3
 *          q_c  delivery  scalar  m3/s  normal air
 *          q    demand    scalar  m3/s  normal air
 *          dp   band      scalar  Pa
 * Returns  1/s
 * Assumes  receiver at the temperature of normal air; steady demand
 * Cost     O(1)
 * Source   filling and emptying times of the receiver, added
 */
export const startRate = (receiver: number, delivery: number, demand: number, band: number): number => {
  const x = Math.min(1, demand / delivery);
  return (x * (1 - x) * delivery * normalPressure) / (receiver * band);
};

interface CompressorStartsInputs {
  readonly receiver: number;
  readonly delivery: number;
  readonly demand: number;
  readonly band: number;
  readonly allowed: number;
}

export const compressorStartsSheet = defineSheet({
  id: 'air/compressor-starts',
  version: 1,
  inputs: {
    receiver: numberField('volume', 'V', vessels),
    delivery: numberField('normalAirFlow', 'q_c', { least: 1e-7, most: 100 }),
    demand: numberField('normalAirFlow', 'q', normalFlows),
    band: numberField('pressureDifference', '\\Delta p', { least: 100, most: 1e7 }),
    allowed: numberField('startRate', 'f_{\\max}', { least: 1e-6, most: 1 }),
  },
  outputs: {
    loadShare: numberField('ratio', 'x'),
    starts: numberField('startRate', 'f'),
    worstStarts: numberField('startRate', 'f_{1/2}'),
    volumeNeeded: numberField('volume', 'V_x'),
    volumeNeededWorst: numberField('volume', 'V_{1/2}'),
  },
  formula: [
    'x = \\frac{q}{q_c}, \\quad f = \\frac{x (1 - x)\\, q_c\\, p_n}{V \\Delta p}, \\quad f_{1/2} = \\frac{q_c\\, p_n}{4 V \\Delta p}',
    'V_x = \\frac{x (1 - x)\\, q_c\\, p_n}{f_{\\max} \\Delta p}, \\quad V_{1/2} = \\frac{q_c\\, p_n}{4 f_{\\max} \\Delta p}',
  ],
  limits: [
    { code: 'COMPRESSOR_NEVER_UNLOADS', broken: (_, { loadShare }) => loadShare >= 1 },
    {
      code: 'COMPRESSOR_STARTS_MANY',
      broken: ({ allowed }, { starts }) => starts > allowed * (1 + 1e-9),
    },
    {
      code: 'COMPRESSOR_STARTS_WORST',
      broken: ({ allowed }, { starts, worstStarts }) =>
        starts <= allowed * (1 + 1e-9) && worstStarts > allowed * (1 + 1e-9),
    },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    {
      title: 'article of a compressor dealer on receivers',
      place: 'V = (t1 + t2) Q p x (1 - x)/D',
      mark: 'read',
    },
  ],
  compute: ({ receiver, delivery, demand, band, allowed }: CompressorStartsInputs) => {
    const starts = startRate(receiver, delivery, demand, band);
    const worstStarts = startRate(receiver, delivery, 0.5 * delivery, band);
    return {
      loadShare: demand / delivery,
      starts,
      worstStarts,
      volumeNeeded: (receiver * starts) / allowed,
      volumeNeededWorst: (receiver * worstStarts) / allowed,
    };
  },
});
