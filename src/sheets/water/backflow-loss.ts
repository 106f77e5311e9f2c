import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { gaugePressures } from './bounds.ts';

/** Loss of a reduced-pressure backflow preventer, Pa, nearly the same at every flow (memory). */
export const backflowLoss = { low: 0.7e5, high: 1e5 } as const;

/** Pressure behind a device of constant loss, Pa gauge; below 0 nothing comes through. */
export const behindDevice = (pressure: number, loss: number): number => pressure - loss;

interface BackflowLossInputs {
  readonly pressure: number;
  readonly lowLoss: number;
  readonly highLoss: number;
}

export const backflowLossSheet = defineSheet({
  id: 'water/backflow-loss',
  version: 1,
  inputs: {
    pressure: numberField('gaugePressure', 'p', gaugePressures),
    lowLoss: numberField('pressureDifference', '\\Delta p_1', {
      least: 0,
      most: 1e7,
      assumed: backflowLoss.low,
    }),
    highLoss: numberField('pressureDifference', '\\Delta p_2', {
      least: 0,
      most: 1e7,
      assumed: backflowLoss.high,
    }),
  },
  outputs: { least: numberField('gaugePressure', 'p_2'), most: numberField('gaugePressure', 'p_1') },
  formula: ['p_1 = p - \\Delta p_1, \\quad p_2 = p - \\Delta p_2'],
  limits: [
    {
      code: 'BACKFLOW_MEMORY',
      broken: ({ lowLoss, highLoss }) => lowLoss === backflowLoss.low || highLoss === backflowLoss.high,
    },
    { code: 'BACKFLOW_NOTHING_LEFT', broken: (_, { least }) => least <= 0 },
    { code: 'BACKFLOW_RULES', broken: () => true },
    { code: 'BACKFLOW_DUMPS', broken: () => true },
  ],
  sources: [{ title: 'plumbing trade', place: 'reduced-pressure device, 0.7 to 1.0 bar', mark: 'memory' }],
  check: ({ lowLoss, highLoss }) =>
    highLoss >= lowLoss
      ? []
      : [{ code: 'BACKFLOW_BAND', path: 'highLoss', given: highLoss, allowed: `>= ${lowLoss}` }],
  compute: ({ pressure, lowLoss, highLoss }: BackflowLossInputs) => ({
    least: behindDevice(pressure, highLoss),
    most: behindDevice(pressure, lowLoss),
  }),
});
