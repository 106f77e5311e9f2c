import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { shares, times, timesAboveZero } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Share of an index in which a spray wets, where its share of the dwell is stated.
 *
 * Method   f = g t_d/tau
 * Symbols  g    part   scalar  1  share of the dwell
 *          t_d  dwell  scalar  s  at most tau
 *          tau  index  scalar  s  > 0
 * Returns  1
 * Problems DWELL_OVER_INDEX
 * Assumes  nothing wets during the stroke
 * Cost     O(1)
 * Source   definition
 */
export const wettedShare = (part: number, dwell: number, index: number): number => (part * dwell) / index;

interface WettedShareInputs {
  readonly part: number;
  readonly dwell: number;
  readonly index: number;
}

export const wettedShareSheet = defineSheet({
  id: 'hygiene/wetted-share',
  version: 1,
  inputs: {
    part: numberField('ratio', 'g', shares),
    dwell: numberField('time', 't_d', times),
    index: numberField('time', '\\tau', timesAboveZero),
  },
  outputs: { share: numberField('ratio', 'f') },
  formula: ['f = g \\frac{t_d}{\\tau}'],
  limits: [],
  sources: [derived],
  check: ({ dwell, index }) =>
    dwell <= index * (1 + 1e-9)
      ? []
      : [{ code: 'DWELL_OVER_INDEX', path: 'dwell', given: dwell, allowed: `<= ${index}` }],
  compute: (i: WettedShareInputs) => ({ share: wettedShare(i.part, i.dwell, i.index) }),
});
