import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { flows, times } from './bounds.ts';
import { arithmetic } from './sources.ts';

/**
 * Fresh water that a washer takes on the mean.
 *
 * Method   Q = n q + Q_m + V/t
 * Symbols  n    rate          scalar  1/s
 *          q    rinse         scalar  m3    fresh water of a bottle
 *          Q_m  makeUp        scalar  m3/s  overflow of the baths, in all
 *          V    dumped        scalar  m3    let go at each dump
 *          t    betweenDumps  scalar  s
 * Returns  m3/s
 * Cost     O(1)
 * Source   balance of the water
 */
export const washerWater = (
  rate: number,
  rinse: number,
  makeUp: number,
  dumped: number,
  betweenDumps: number,
): number => rate * rinse + makeUp + dumped / betweenDumps;

interface WasherWaterInputs {
  readonly rate: number;
  readonly rinse: number;
  readonly makeUp: number;
  readonly dumped: number;
  readonly betweenDumps: number;
  readonly carriedOut: number;
  readonly evaporated: number;
}

export const washerWaterSheet = defineSheet({
  id: 'water/washer-water',
  version: 1,
  inputs: {
    rate: numberField('rate', 'n', { least: 1e-6, most: 1e3 }),
    rinse: numberField('volume', 'q', { least: 0, most: 1 }),
    makeUp: numberField('volumeFlow', 'Q_m', { ...flows, assumed: 0 }),
    dumped: numberField('volume', 'V', { least: 0, most: 1e3, assumed: 0 }),
    betweenDumps: numberField('time', 't', { ...times, least: 60, assumed: 28_800 }),
    carriedOut: numberField('volume', 'v', { least: 0, most: 0.01, assumed: 0 }),
    evaporated: numberField('volumeFlow', 'Q_e', { ...flows, assumed: 0 }),
  },
  outputs: {
    fresh: numberField('volumeFlow', 'Q'),
    perBottle: numberField('volume', 'q_b'),
    toDrain: numberField('volumeFlow', 'Q_d'),
  },
  formula: ['Q = n q + Q_m + \\frac{V}{t}, \\quad q_b = \\frac{Q}{n}, \\quad Q_d = Q - n v - Q_e'],
  limits: [
    { code: 'WASHER_WATER_MEAN', broken: () => true },
    { code: 'WASHER_WATER_BALANCE', broken: (_, { toDrain }) => toDrain < 0 },
    { code: 'WASHER_WATER_MUCH', broken: (_, { perBottle }) => perBottle > 0.006 },
  ],
  sources: [arithmetic],
  compute: (i: WasherWaterInputs) => {
    const fresh = washerWater(i.rate, i.rinse, i.makeUp, i.dumped, i.betweenDumps);
    return {
      fresh,
      perBottle: fresh / i.rate,
      toDrain: fresh - i.rate * i.carriedOut - i.evaporated,
    };
  },
});
