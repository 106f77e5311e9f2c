import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { periods, ratesAboveZero } from './bounds.ts';
import { definition } from './sources.ts';

interface GoodsInputs {
  readonly rate: number;
  readonly duration: number;
  readonly spare: number;
  readonly bath: number;
  readonly concentration: number;
  readonly carry: number;
}

/**
 * What a run uses up.
 *
 * Method   n = R t (1 + s);  m = c (V + n v)
 * Symbols  R  rate           scalar  1/s    bottles
 *          t  duration       scalar  s
 *          s  spare          scalar         share more, for what is broken, rejected, looked at
 *          V  bath           scalar  m3     of the detergent, made up once
 *          c  concentration  scalar  kg/m3  of what does the work in it
 *          v  carry          scalar  m3     that a bottle carries out
 * Returns  bottles and as many caps, not rounded; detergent, kg
 * Assumes  the bath is made up once and topped up as it is carried out; nothing reacts or is let go
 * Cost     O(1)
 * Source   definition
 */
export const runGoods = ({ rate, duration, spare, bath, concentration, carry }: GoodsInputs) => {
  const bottles = rate * duration * (1 + spare);
  return { bottles, detergent: concentration * (bath + bottles * carry) };
};

export const runGoodsSheet = defineSheet({
  id: 'rate/run-goods',
  version: 1,
  inputs: {
    rate: numberField('rate', 'R', ratesAboveZero),
    duration: numberField('time', 't', periods),
    spare: numberField('ratio', 's', { least: 0, most: 10, assumed: 0.1 }),
    bath: numberField('volume', 'V', { least: 0, most: 1000, assumed: 0 }),
    concentration: numberField('soluteConcentration', 'c', { least: 0, most: 2000, assumed: 0 }),
    carry: numberField('volume', 'v', { least: 0, most: 1, assumed: 0 }),
  },
  outputs: { bottles: numberField('count', 'n'), detergent: numberField('mass', 'm') },
  formula: ['n = R\\, t\\, (1 + s), \\quad m = c\\, (V + n v)'],
  limits: [{ code: 'GOODS_NO_SPARE', broken: ({ spare }) => spare === 0 }],
  sources: [definition],
  compute: runGoods,
});
