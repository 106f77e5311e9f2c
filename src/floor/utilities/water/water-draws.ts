import type { Book } from '../../../book/index.ts';
import { washerWaterSheet } from '../../../sheets/water/washer-water.ts';
import { agreedRate } from '../agreed-period.ts';
import type { Calculation } from '../calculation.ts';
import type { Draw } from '../need.ts';
import { flowOfAll } from './flow-of-all.ts';
import { flushingAt, flushingVolume } from './flushing.ts';
import { tieInsOf, waterDraw } from './water-draw.ts';
import { hardnessAt } from './water-quality.ts';

/** Fresh water of a bottle at the agreed rate, cold and hot together. */
const perBottle = (c: Calculation) => {
  const flows = [...tieInsOf(c.book, 'water'), ...tieInsOf(c.book, 'hot water')].map((at) =>
    waterDraw(c, at),
  );
  return c.run(washerWaterSheet, {
    rate: agreedRate(c),
    // what flows all the time, so that nothing is left to be told bottle by bottle
    rinse: { value: 0, from: { path: '/line/stations', assumed: true } },
    makeUp: flowOfAll(c, flows),
  })?.perBottle;
};

/** Figures of the water that nothing is held against. */
export const waterDraws = (book: Book): readonly Draw[] => {
  const cold = tieInsOf(book, 'water');
  const utility = 'water';
  if (cold.length === 0) return [];
  return [
    { id: 'waterPerBottle', utility, kind: 'volume', answer: perBottle },
    { id: 'hardness', utility, kind: 'ratio', answer: (c) => hardnessAt(c)?.hardnessClass },
    { id: 'flushing', utility, kind: 'volume', answer: flushingVolume },
    { id: 'flushingTime', utility, kind: 'time', answer: (c) => flushingAt(c)?.time },
  ];
};
