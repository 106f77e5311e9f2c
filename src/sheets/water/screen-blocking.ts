import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows } from './bounds.ts';

/**
 * Share of a screen that is blocked, from its loss now and clean.
 *
 * Method   dp/Q^2 = (dp_0/Q_0^2)/(1 - b)^2, so b = 1 - sqrt((dp_0/dp)) Q/Q_0
 * Symbols  dp_0, Q_0  clean loss, Pa, and flow, m3/s
 *          dp, Q      now
 * Returns  ratio; below 0 where it is cleaner than clean, which means a reading is wrong
 * Assumes  loss with the square of the speed through the free part
 * Cost     O(1)
 * Source   continuity and a loss that goes with the square
 */
export const blockedShare = (
  cleanLoss: number,
  cleanFlow: number,
  lossNow: number,
  flowNow: number,
): number => 1 - Math.sqrt(cleanLoss / lossNow) * (flowNow / cleanFlow);

interface ScreenBlockingInputs {
  readonly cleanLoss: number;
  readonly cleanFlow: number;
  readonly lossNow: number;
  readonly flowNow: number;
}

export const screenBlockingSheet = defineSheet({
  id: 'water/screen-blocking',
  version: 1,
  inputs: {
    cleanLoss: numberField('pressureDifference', '\\Delta p_0', { least: 1, most: 1e7 }),
    cleanFlow: numberField('volumeFlow', 'Q_0', { ...flows, least: 1e-9 }),
    lossNow: numberField('pressureDifference', '\\Delta p', { least: 1, most: 1e7 }),
    flowNow: numberField('volumeFlow', 'Q', { ...flows, least: 1e-9 }),
  },
  outputs: { blocked: numberField('ratio', 'b'), lossRatio: numberField('ratio', 'r') },
  formula: [
    'r = \\frac{\\Delta p\\, Q_0^2}{\\Delta p_0\\, Q^2} = \\frac{1}{(1 - b)^2}, \\quad b = 1 - \\frac{1}{\\sqrt{r}}',
  ],
  limits: [
    { code: 'SCREEN_READING_WRONG', broken: (_, { blocked }) => blocked < -0.02 },
    { code: 'SCREEN_HALF', broken: (_, { blocked }) => blocked >= 0.5 },
    { code: 'SCREEN_FLOW_FALLS', broken: ({ cleanFlow, flowNow }) => flowNow < 0.9 * cleanFlow },
  ],
  sources: [{ title: 'continuity, loss with the square of the speed', place: 'derived', mark: 'computed' }],
  compute: (i: ScreenBlockingInputs) => ({
    blocked: blockedShare(i.cleanLoss, i.cleanFlow, i.lossNow, i.flowNow),
    lossRatio: (i.lossNow / i.cleanLoss) * (i.cleanFlow / i.flowNow) ** 2,
  }),
});
