import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { carries, concentrations, flows, rates, times } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { derived } from './sources.ts';

/**
 * Concentration that a well mixed sump reaches from what bottles carry in.
 *
 * Method   c = n v c_in/(n v + Q)
 * Symbols  n     rate      scalar  1/s
 *          v     carry     scalar  m3     of a bottle, in and out
 *          c_in  carried   scalar  kg/m3
 *          Q     overflow  scalar  m3/s   fresh water in, overflow out
 * Returns  concentration, kg/m3
 * Assumes  well mixed, level constant, as much carried out as in
 * Cost     O(1)
 * Source   balance
 */
export const sumpConcentration = (rate: number, carry: number, carried: number, overflow: number): number =>
  (rate * carry * carried) / (rate * carry + overflow);

/**
 * Time constant with which the sump gets there.
 *
 * Method   theta = V/(n v + Q)
 * Symbols  V  volume  scalar  m3
 * Returns  time, s
 * Cost     O(1)
 * Source   balance
 */
export const sumpTime = (rate: number, carry: number, overflow: number, volume: number): number =>
  volume / (rate * carry + overflow);

interface SumpInputs {
  readonly rate: number;
  readonly carry: number;
  readonly carried: number;
  readonly overflow: number;
  readonly volume: number;
  readonly time: number;
}

export const sumpSheet = defineSheet({
  id: 'hygiene/sump',
  version: 1,
  inputs: {
    rate: numberField('rate', 'n', { least: 1e-6, most: rates.most }),
    carry: numberField('volume', 'v', carries),
    carried: numberField('soluteConcentration', 'c_{\\mathrm{in}}', concentrations),
    overflow: numberField('volumeFlow', 'Q', flows),
    volume: numberField('volume', 'V', { least: 1e-6, most: 1e4 }),
    time: numberField('time', 't', { ...times, assumed: 0 }),
  },
  outputs: {
    steady: numberField('soluteConcentration', 'c_{\\infty}'),
    timeConstant: numberField('time', '\\theta'),
    sampleAfter: numberField('time', '3 \\theta'),
    now: numberField('soluteConcentration', 'c(t)'),
  },
  formula: [
    'c_{\\infty} = \\frac{n v c_{\\mathrm{in}}}{n v + Q}, \\quad \\theta = \\frac{V}{n v + Q}',
    'c(t) = c_{\\infty} ( 1 - e^{-t/\\theta} )',
  ],
  limits: [
    always('STEADY_AFTER_3'),
    { code: 'SUMP_NO_OVERFLOW', broken: ({ overflow }) => overflow === 0 },
    always('WEIGH_TWENTY'),
    chemicalCaution,
  ],
  sources: [derived],
  compute: ({ rate, carry, carried, overflow, volume, time }: SumpInputs) => {
    const steady = sumpConcentration(rate, carry, carried, overflow);
    const timeConstant = sumpTime(rate, carry, overflow, volume);
    return {
      steady,
      timeConstant,
      sampleAfter: 3 * timeConstant,
      now: -steady * Math.expm1(-time / timeConstant),
    };
  },
});
