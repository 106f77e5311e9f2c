import { agreedPeriodSheet } from '../../sheets/rate/agreed-period.ts';
import { ratePathOf } from '../rate-path.ts';
import { stationOf } from '../station-of.ts';
import type { Calculation } from './calculation.ts';
import type { Known } from './known.ts';

/** Bottles that the line moves on at once: the washer's row, or one a lane. */
export const bottlesAtOnce = (c: Calculation): Known | undefined => {
  const washer = stationOf(c.book, 'washer');
  if (washer?.station.row !== undefined) {
    return { value: washer.station.row, from: { path: `${washer.path}/row` } };
  }
  const fill = stationOf(c.book, 'fill');
  const lanes = (fill?.station.lanes ?? []).filter((lane) => lane.out !== true).length;
  if (fill !== undefined && lanes > 0) return { value: lanes, from: { path: `${fill.path}/lanes` } };
  c.miss(washer === undefined ? '/line/stations' : `${washer.path}/row`);
  return undefined;
};

export const agreedRate = (c: Calculation): Known | undefined =>
  c.needed(ratePathOf(c.book, c.formatPath), 'rate');

/** Time between two rows at the agreed rate: utilities are asked for the line at its rate, not for what a floor lets it do. */
export const agreedPeriod = (c: Calculation): Known | undefined =>
  c.once(
    'agreedPeriod',
    (c) => c.run(agreedPeriodSheet, { rate: agreedRate(c), bottles: bottlesAtOnce(c) })?.period,
  );
