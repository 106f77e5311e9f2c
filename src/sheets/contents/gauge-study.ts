import { choiceField, numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { spreads, spreadsOrNone } from './fill-bounds.ts';
import { gaugeManual } from './fill-sources.ts';
import { rangeConstants, type SubgroupSize, subgroupSizes } from './range-constants.ts';

interface GaugeStudyInputs {
  readonly meanRange: number;
  readonly operatorDifference: number;
  readonly partRange: number;
  readonly trials: SubgroupSize;
  readonly operators: SubgroupSize;
  readonly parts: SubgroupSize;
}

interface GaugeStudyOutputs {
  readonly repeatability: number;
  readonly reproducibility: number;
  readonly gauge: number;
  readonly partSpread: number;
  readonly total: number;
  readonly share: number;
  readonly categories: number;
}

/** Of many ranges the mean tells the standard deviation by d2. */
const ofManyRanges = (size: SubgroupSize): number => 1 / rangeConstants[size][0];

/** Of one range alone by d2*, the root of its mean square. */
const ofOneRange = (size: SubgroupSize): number => 1 / Math.hypot(...rangeConstants[size]);

/**
 * What of a spread of readings is the balance and its users, and what the bottles.
 *
 * Method   averages and ranges: EV = R K1, AV^2 = (D K2)^2 - EV^2/(n r) (none below zero), PV = Rp K3
 * Symbols  meanRange           R   of the trials of one operator on one part  m3
 *          operatorDifference  D   greatest less least mean of an operator    m3
 *          partRange           Rp  greatest less least mean of a part         m3
 *          trials, operators, parts  r, o, n
 * Returns  repeatability, reproducibility, both, spread of parts, of all; share of the gauge, categories told apart
 * Assumes  every operator measured every part as often as the others
 * Cost     O(1)
 * Source   measurement system analysis, average and range method (memory); K = 1/d2 and 1/d2* are computed
 */
const gaugeStudy = (i: GaugeStudyInputs): GaugeStudyOutputs => {
  const repeatability = i.meanRange * ofManyRanges(i.trials);
  const among = (i.operatorDifference * ofOneRange(i.operators)) ** 2;
  const reproducibility = Math.sqrt(
    Math.max(0, among - repeatability ** 2 / (Number(i.parts) * Number(i.trials))),
  );
  const gauge = Math.hypot(repeatability, reproducibility);
  const partSpread = i.partRange * ofOneRange(i.parts);
  const total = Math.hypot(gauge, partSpread);
  return {
    repeatability,
    reproducibility,
    gauge,
    partSpread,
    total,
    share: gauge / total,
    categories: Math.max(1, Math.trunc((1.41 * partSpread) / gauge)),
  };
};

export const gaugeStudySheet = defineSheet<GaugeStudyInputs, GaugeStudyOutputs>({
  id: 'contents/gauge-study',
  version: 1,
  inputs: {
    meanRange: weighedField('volume', '\\bar R', spreads),
    operatorDifference: weighedField('volume', 'D', spreadsOrNone),
    partRange: weighedField('volume', 'R_p', spreadsOrNone),
    trials: choiceField<SubgroupSize>('r', subgroupSizes, '3'),
    operators: choiceField<SubgroupSize>('o', subgroupSizes, '3'),
    parts: choiceField<SubgroupSize>('n', subgroupSizes, '10'),
  },
  outputs: {
    repeatability: weighedField('volume', 'E_v'),
    reproducibility: weighedField('volume', 'A_v'),
    gauge: weighedField('volume', 'G'),
    partSpread: weighedField('volume', 'P_v'),
    total: weighedField('volume', 'T_v'),
    share: numberField('ratio', 'G/T_v'),
    categories: numberField('count', 'n_c'),
  },
  formula: [
    'E_v = \\frac{\\bar R}{d_2(r)}, \\quad A_v^2 = \\max \\left( 0, \\frac{D^2}{d_2^{*2}(o)} - \\frac{E_v^2}{n r} \\right), \\quad P_v = \\frac{R_p}{d_2^*(n)}, \\quad d_2^{*2} = d_2^2 + d_3^2',
    'G^2 = E_v^2 + A_v^2, \\quad T_v^2 = G^2 + P_v^2, \\quad n_c = \\max \\left( 1, \\left\\lfloor \\frac{1.41 P_v}{G} \\right\\rfloor \\right)',
  ],
  limits: [
    { code: 'GAUGE_COARSE', broken: (_, { share }) => share > 0.3 },
    { code: 'GAUGE_MIDDLING', broken: (_, { share }) => share > 0.1 && share <= 0.3 },
  ],
  sources: [gaugeManual],
  compute: gaugeStudy,
});
