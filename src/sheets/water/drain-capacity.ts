import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { bores } from './bounds.ts';
import { drainFlow, drainVelocity, hydraulicRadius, wettedArea } from './part-full-pipe.ts';
import { epanetManual } from './sources.ts';

export const drainBounds = {
  slope: { least: 1e-6, most: 1 },
  manning: { least: 0.005, most: 0.1, assumed: 0.013 },
} as const;

/** Lowest velocity at which a drain inside a building cleans itself, m/s: DIN 1986-100, read in a pipe manual. */
export const selfCleaning = 0.5;

interface DrainCapacityInputs {
  readonly bore: number;
  readonly slope: number;
  readonly manning: number;
  readonly filling: number;
}

export const drainCapacitySheet = defineSheet({
  id: 'water/drain-capacity',
  version: 1,
  inputs: {
    bore: numberField('length', 'D', bores),
    slope: numberField('ratio', 'S', drainBounds.slope),
    manning: numberField('ratio', 'n', drainBounds.manning),
    filling: numberField('ratio', 'y/D', { above: 0, most: 1, assumed: 0.5 }),
  },
  outputs: {
    flow: numberField('volumeFlow', 'Q'),
    velocity: numberField('velocity', 'V'),
    area: numberField('area', 'A'),
    hydraulicRadius: numberField('length', 'R'),
    fullFlow: numberField('volumeFlow', 'Q_f'),
  },
  formula: [
    '\\varphi = 2 \\arccos \\left( 1 - 2 \\frac{y}{D} \\right), \\quad A = \\frac{D^2}{8} (\\varphi - \\sin \\varphi), \\quad R = \\frac{2 A}{D \\varphi}',
    'V = \\frac{R^{2/3} S^{1/2}}{n}, \\quad Q = A V',
  ],
  limits: [
    { code: 'DRAIN_SLOW', broken: (_, { velocity }) => velocity < selfCleaning },
    { code: 'DRAIN_FULL', broken: ({ filling }) => filling > 0.7 },
  ],
  sources: [{ ...epanetManual, place: 'Manning coefficients' }],
  compute: ({ bore, slope, manning, filling }: DrainCapacityInputs) => ({
    flow: drainFlow(bore, slope, manning, filling),
    velocity: drainVelocity(bore, slope, manning, filling),
    area: wettedArea(filling) * bore * bore,
    hydraulicRadius: hydraulicRadius(filling) * bore,
    fullFlow: drainFlow(bore, slope, manning, 1),
  }),
});
