import { brentRoot } from '../brent-root.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores } from './bounds.ts';
import { drainBounds, selfCleaning } from './drain-capacity.ts';
import { drainFlow, drainVelocity, fillingOfMostFlow } from './part-full-pipe.ts';
import { epanetManual } from './sources.ts';

/**
 * Filling at which a round drain carries a flow: the lower of two where there are two.
 *
 * Method   root of `drainFlow` = Q between empty and the filling that carries most, by `brentRoot`
 * Symbols  Q  flow     scalar  m3/s       >= 0
 *          D  bore     scalar  m
 *          S  slope    ratio
 *          n  manning  scalar  s/m^(1/3)
 * Returns  y/D; NaN where the drain cannot carry it by its fall
 * Cost     about 10 evaluations
 * Source   Manning's equation
 */
export const drainFilling = (flow: number, bore: number, slope: number, manning: number): number =>
  flow === 0 ? 0 : brentRoot((y) => drainFlow(bore, slope, manning, y) - flow, 0, fillingOfMostFlow);

interface DrainDepthInputs {
  readonly flow: number;
  readonly bore: number;
  readonly slope: number;
  readonly manning: number;
}

export const drainDepthSheet = defineSheet({
  id: 'water/drain-depth',
  version: 1,
  inputs: {
    flow: numberField('volumeFlow', 'Q', { above: 0, most: 100 }),
    bore: numberField('length', 'D', bores),
    slope: numberField('ratio', 'S', drainBounds.slope),
    manning: numberField('ratio', 'n', drainBounds.manning),
  },
  outputs: {
    filling: numberField('ratio', 'y/D'),
    depth: numberField('length', 'y'),
    velocity: numberField('velocity', 'V'),
    residual: numberField('volumeFlow', '\\Delta Q'),
  },
  formula: ['Q = \\frac{A(y)\\, R(y)^{2/3} S^{1/2}}{n}'],
  limits: [
    { code: 'DRAIN_SLOW', broken: (_, { velocity }) => velocity < selfCleaning },
    { code: 'DRAIN_FULL', broken: (_, { filling }) => filling > 0.7 },
  ],
  sources: [{ ...epanetManual, place: 'Manning coefficients' }],
  check: ({ flow, bore, slope, manning }) => {
    const most = drainFlow(bore, slope, manning, fillingOfMostFlow);
    return flow > most
      ? [{ code: 'DRAIN_SURCHARGED', path: 'flow', given: flow, allowed: `<= ${most}` }]
      : [];
  },
  compute: ({ flow, bore, slope, manning }: DrainDepthInputs) => {
    const filling = drainFilling(flow, bore, slope, manning);
    return {
      filling,
      depth: filling * bore,
      velocity: drainVelocity(bore, slope, manning, filling),
      residual: drainFlow(bore, slope, manning, filling) - flow,
    };
  },
});
