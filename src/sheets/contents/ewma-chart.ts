import { numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { deviations, fillVolumes, someFillVolumes, spreads } from './fill-bounds.ts';
import { handbook } from './fill-sources.ts';

interface EwmaInputs {
  readonly values: readonly number[];
  readonly target: number;
  readonly spread: number;
  readonly weight: number;
  readonly reach: number;
}

interface EwmaOutputs {
  readonly averages: readonly number[];
  readonly reaches: readonly number[];
  readonly low: number;
  readonly high: number;
  readonly firstSignal: number;
}

/**
 * Exponentially weighted moving average of a run, for a drift that single values hide.
 *
 * Method   z_i = w x_i + (1 - w) z_(i-1), z_0 the target; limits k s sqrt(w/(2 - w) (1 - (1 - w)^(2i)))
 * Symbols  values  in order of time           m3
 *          target  what the fill is set to    m3
 *          spread  s of a single value        m3
 *          weight  w of the newest value      above 0, to 1
 *          reach   k, in standard deviations
 * Returns  averages, half-width of the limits at each, settled limits, first average outside its limits
 * Cost     O(values)
 * Source   NIST/SEMATECH e-Handbook 6.3.2.4
 */
const ewmaChart = ({ values, target, spread, weight, reach }: EwmaInputs): EwmaOutputs => {
  const averages: number[] = [];
  let last = target;
  for (const value of values) {
    last = weight * value + (1 - weight) * last;
    averages.push(last);
  }
  const settled = reach * spread * Math.sqrt(weight / (2 - weight));
  const reaches = values.map((_, i) => settled * Math.sqrt(1 - (1 - weight) ** (2 * (i + 1))));
  return {
    averages,
    reaches,
    low: target - settled,
    high: target + settled,
    firstSignal: averages.findIndex((average, i) => Math.abs(average - target) > reaches[i]!) + 1,
  };
};

export const ewmaChartSheet = defineSheet<EwmaInputs, EwmaOutputs>({
  id: 'contents/ewma-chart',
  version: 1,
  inputs: {
    values: weighedList('volume', 'x_i', fillVolumes),
    target: weighedField('volume', 'x_0', someFillVolumes),
    spread: weighedField('volume', 's', spreads),
    weight: numberField('ratio', '\\lambda', { least: 0.01, most: 1, assumed: 0.2 }),
    reach: numberField('ratio', 'k', { ...deviations, assumed: 3 }),
  },
  outputs: {
    averages: weighedList('volume', 'z_i'),
    reaches: weighedList('volume', 'h_i'),
    low: weighedField('volume', 'z_-'),
    high: weighedField('volume', 'z_+'),
    firstSignal: numberField('count', 'i_s'),
  },
  formula: [
    'z_i = \\lambda x_i + (1 - \\lambda) z_{i-1}, \\quad z_0 = x_0, \\quad z_\\pm = x_0 \\pm k s \\sqrt{\\frac{\\lambda}{2 - \\lambda}}',
    'h_i = k s \\sqrt{\\frac{\\lambda}{2 - \\lambda} \\left( 1 - (1 - \\lambda)^{2 i} \\right)}, \\quad i_s = \\min \\{ i : |z_i - x_0| > h_i \\}',
  ],
  limits: [{ code: 'CHART_DRIFT', broken: (_, { firstSignal }) => firstSignal > 0 }],
  sources: [handbook('6.3.2.4')],
  compute: ewmaChart,
});
