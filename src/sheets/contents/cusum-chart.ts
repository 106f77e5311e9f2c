import { numberField, weighedField, weighedList } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { fillVolumes, someFillVolumes, spreads, spreadsOrNone } from './fill-bounds.ts';
import { handbook } from './fill-sources.ts';

interface CusumInputs {
  readonly values: readonly number[];
  readonly target: number;
  readonly slack: number;
  readonly decision: number;
}

interface CusumOutputs {
  readonly above: readonly number[];
  readonly below: readonly number[];
  readonly firstHigh: number;
  readonly firstLow: number;
}

/**
 * Sums of what a run lies above and below its target, for a small lasting shift.
 *
 * Method   S+ = max(0, S+ + x - target - k), S- = max(0, S- + target - k - x); a signal beyond h
 * Symbols  values    in order of time                   m3
 *          target    what the fill is set to            m3
 *          slack     k, half of the shift to be found   m3
 *          decision  h                                  m3
 * Returns  both sums at each value, first value at which each passes h
 * Cost     O(values)
 * Source   NIST/SEMATECH e-Handbook 6.3.2.3
 */
const cusumChart = ({ values, target, slack, decision }: CusumInputs): CusumOutputs => {
  const above: number[] = [];
  const below: number[] = [];
  for (const value of values) {
    above.push(Math.max(0, (above.at(-1) ?? 0) + value - target - slack));
    below.push(Math.max(0, (below.at(-1) ?? 0) + target - slack - value));
  }
  const first = (sums: readonly number[]): number => sums.findIndex((sum) => sum > decision) + 1;
  return { above, below, firstHigh: first(above), firstLow: first(below) };
};

export const cusumChartSheet = defineSheet<CusumInputs, CusumOutputs>({
  id: 'contents/cusum-chart',
  version: 1,
  inputs: {
    values: weighedList('volume', 'x_i', fillVolumes),
    target: weighedField('volume', 'x_0', someFillVolumes),
    slack: weighedField('volume', 'k', spreadsOrNone),
    decision: weighedField('volume', 'h', spreads),
  },
  outputs: {
    above: weighedList('volume', 'S_+'),
    below: weighedList('volume', 'S_-'),
    firstHigh: numberField('count', 'i_+'),
    firstLow: numberField('count', 'i_-'),
  },
  formula: [
    'S_{+,i} = \\max(0, S_{+,i-1} + x_i - x_0 - k), \\quad S_{-,i} = \\max(0, S_{-,i-1} + x_0 - k - x_i), \\quad i_\\pm = \\min \\{ i : S_{\\pm,i} > h \\}',
  ],
  limits: [{ code: 'CHART_DRIFT', broken: (_, { firstHigh, firstLow }) => firstHigh + firstLow > 0 }],
  sources: [handbook('6.3.2.3')],
  compute: cusumChart,
});
