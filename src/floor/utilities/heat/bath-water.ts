import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { type ZoneAt, zonesOf } from './zones-of.ts';

/** Cold water from the mains where nobody measured it: common practice. */
const usualCold = 288.15;

export type FeedKind = 'cold' | 'hot' | 'zone';

/** Where the fresh water of a zone comes from: another zone, a hot tie-in, else the cold one. */
export const feedOf = (c: Pick<Calculation, 'book'>, { zone }: ZoneAt): FeedKind => {
  if (zone.from !== undefined) return 'zone';
  const tieIn = (c.book.line?.tieIns ?? []).find((each) => each.tag === zone.tieIn);
  return tieIn?.kind === 'hot water' ? 'hot' : 'cold';
};

/** Temperature of the cold water of the floor. */
export const coldWater = (c: Calculation): Known =>
  c.numberOr(`${c.floorPath}/water/temperature`, 'temperature', usualCold);

/** Temperature at which the fresh water of a zone comes in. */
export const feedTemperature = (c: Calculation, at: ZoneAt): Known | undefined => {
  const feed = feedOf(c, at);
  if (feed === 'hot') return c.needed(`${c.floorPath}/water/hot/temperature`, 'temperature');
  if (feed === 'cold') return coldWater(c);
  const before = zonesOf(c.book).find((each) => each.zone.tag === at.zone.from);
  return before === undefined ? undefined : c.needed(`${before.path}/temperature`, 'temperature');
};
