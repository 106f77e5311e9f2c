import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { logs, times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { disinfectionTextbook } from './sources.ts';

/**
 * Decades by which germs fall.
 *
 * Method   log10(N0/N) = k C t/ln 10, Chick and Watson with exponent 1
 * Symbols  k  rate      scalar  m3/(kg s)  of the natural logarithm
 *          C  residual  scalar  kg/m3      at the end of the contact
 *          t  time      scalar  s
 * Returns  logs
 * Assumes  disinfectant constant, germs in suspension and alike
 * Cost     O(1)
 * Source   Chick 1908, Watson 1908; textbook
 */
export const chickWatsonLogs = (rate: number, residual: number, time: number): number =>
  (rate * residual * time) / Math.LN10;

/**
 * Time in which germs fall by so many decades.
 *
 * Method   t = L ln 10/(k C)
 * Returns  time, s
 * Cost     O(1)
 * Source   the same
 */
export const chickWatsonTime = (rate: number, residual: number, wanted: number): number =>
  (wanted * Math.LN10) / (rate * residual);

interface ChickWatsonInputs {
  readonly rate: number;
  readonly residual: number;
  readonly time: number;
  readonly logs: number;
}

export const chickWatsonSheet = defineSheet({
  id: 'hygiene/chick-watson',
  version: 1,
  inputs: {
    rate: numberField('inactivationRate', 'k', { least: 1e-6, most: 1e6 }),
    residual: numberField('soluteConcentration', 'C', { least: 1e-9, most: 250 }),
    time: numberField('time', 't', { ...times, assumed: 0 }),
    logs: numberField('ratio', 'L', logs),
  },
  outputs: {
    ct: numberField('concentrationTime', 'C t'),
    reached: numberField('ratio', 'L_t'),
    neededTime: numberField('time', 't_L'),
  },
  formula: [
    '\\ln \\frac{N}{N_0} = -k C t, \\quad L_t = \\frac{k C t}{\\ln 10}, \\quad t_L = \\frac{L \\ln 10}{k C}',
  ],
  limits: [
    authority,
    always('CT_NOT_FOR_RINSE'),
    always('CT_RESIDUAL'),
    always('CHICK_EXPONENT_ONE'),
    chemicalCaution,
  ],
  sources: [disinfectionTextbook],
  compute: (i: ChickWatsonInputs) => ({
    ct: i.residual * i.time,
    reached: chickWatsonLogs(i.rate, i.residual, i.time),
    neededTime: chickWatsonTime(i.rate, i.residual, i.logs),
  }),
});
