import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { afterRuns, countVolumes, spreadsOrNone } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';

interface FillVarianceInputs {
  readonly repeat: number;
  readonly drift: number;
  readonly perCount: number;
  readonly afterRun: number;
  readonly flowVariation: number;
  readonly lanes: number;
}

interface FillVarianceOutputs {
  readonly countPart: number;
  readonly flowPart: number;
  readonly spread: number;
  readonly spreadOfAll: number;
}

/**
 * Standard deviation of a fill from what it is made of.
 *
 * Method   sigma^2 = repeat^2 + drift^2 + b^2/12 + (a u(q)/q)^2; between lanes it counts under a common preset only
 * Symbols  repeat         within a lane                     m3
 *          drift          over the time that counts         m3
 *          perCount       b, volume of one count            m3
 *          afterRun       a, in proportion to the flow      m3
 *          flowVariation  u(q)/q                            ratio
 *          lanes          between lanes                     m3
 * Returns  the two parts that are computed, spread of a lane, spread over all lanes
 * Cost     O(1)
 * Source   derived; JCGM 100, 4.3.7, for b^2/12 (memory)
 */
const fillVariance = (i: FillVarianceInputs): FillVarianceOutputs => {
  const countPart = i.perCount / Math.sqrt(12);
  const flowPart = Math.abs(i.afterRun) * i.flowVariation;
  const spread = Math.hypot(i.repeat, i.drift, countPart, flowPart);
  return { countPart, flowPart, spread, spreadOfAll: Math.hypot(spread, i.lanes) };
};

export const fillVarianceSheet = defineSheet<FillVarianceInputs, FillVarianceOutputs>({
  id: 'contents/fill-variance',
  version: 1,
  inputs: {
    repeat: weighedField('volume', '\\sigma_r', spreadsOrNone),
    drift: weighedField('volume', '\\sigma_d', { ...spreadsOrNone, assumed: 0 }),
    perCount: weighedField('volume', 'b', countVolumes),
    afterRun: weighedField('volume', 'a', afterRuns),
    flowVariation: numberField('ratio', 'u_q/q', { least: 0, most: 1 }),
    lanes: weighedField('volume', '\\sigma_l', { ...spreadsOrNone, assumed: 0 }),
  },
  outputs: {
    countPart: weighedField('volume', '\\sigma_c'),
    flowPart: weighedField('volume', '\\sigma_q'),
    spread: weighedField('volume', '\\sigma_V'),
    spreadOfAll: weighedField('volume', '\\sigma'),
  },
  formula: [
    '\\sigma_V^2 = \\sigma_r^2 + \\sigma_d^2 + \\sigma_c^2 + \\sigma_q^2, \\quad \\sigma_c = \\frac{b}{\\sqrt{12}}, \\quad \\sigma_q = a \\frac{u_q}{q}, \\quad \\sigma^2 = \\sigma_V^2 + \\sigma_l^2',
  ],
  limits: [],
  sources: [presetTheory],
  compute: fillVariance,
});
