import { airTemperature } from '../air/site-air.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { type ZoneAt, zonesBeside } from './zones-of.ts';

/**
 * Temperature of a bottle as it comes into a zone: that of the last zone before it that has one, else that of the room.
 *
 * Assumes  the wall follows the bath; a thick base lags, which makes its step smaller and the heat less
 */
export const bottleBefore = (c: Calculation, at: ZoneAt): Known | undefined => {
  const before = zonesBeside(c.book, at).findLast(
    ({ index, zone }) => index < at.index && zone.temperature !== undefined,
  );
  return before === undefined ? airTemperature(c) : c.needed(`${before.path}/temperature`, 'temperature');
};
