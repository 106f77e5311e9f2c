import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows } from './bounds.ts';
import { derived } from './sources.ts';

/**
 * Volume between the start and the stop of a pump so that it never starts more often than allowed.
 *
 * Method   V = Q T/4, T = 1/(starts in a second); worst where the inflow is half of the pump's flow
 * Symbols  Q  pumpFlow  scalar  m3/s
 *          n  starts    scalar  1/s   > 0
 * Returns  volume, m3
 * Assumes  steady inflow, one pump
 * Cost     O(1)
 * Source   cycle time t = V/q + V/(Q - q), least at q = Q/2
 */
export const pumpBand = (pumpFlow: number, starts: number): number => pumpFlow / (4 * starts);

export const pumpBandSheet = defineSheet({
  id: 'water/pump-band',
  version: 1,
  inputs: {
    pumpFlow: numberField('volumeFlow', 'Q', flows),
    starts: numberField('startRate', 'n', { least: 1e-6, most: 10 }),
  },
  outputs: { volume: numberField('volume', 'V') },
  formula: ['V = \\frac{Q}{4 n}'],
  limits: [],
  sources: [derived],
  compute: (i: { readonly pumpFlow: number; readonly starts: number }) => ({
    volume: pumpBand(i.pumpFlow, i.starts),
  }),
});
