import { tippingSheet } from '../../../sheets/building/tipping.ts';
import { tippingEdgeSheet } from '../../../sheets/building/tipping-edge.ts';
import type { Calculation } from '../calculation.ts';
import { greatestOf } from '../greatest-of.ts';
import type { Known } from '../known.ts';
import type { Answer } from '../need.ts';
import { centreOf } from './centre-of.ts';
import { lengthOfAll } from './length-of-all.ts';
import type { SectionAt } from './sections-of.ts';
import { gearHeight } from './way-in.ts';

/** A section is moved on no more than half of the slope at which it tips; common practice. */
const mostShare = 0.5;

/** The steepest slope of the way in; level where none is told of a piece that is no ramp. */
export const steepest = (c: Calculation): Known | undefined => {
  const route = c.book.floors![c.floor]!.room?.route ?? [];
  const slopes = route.flatMap(({ kind, slope }, i) => {
    const path = `${c.floorPath}/room/route/${i}/slope`;
    if (kind === 'ramp') return [c.needed(path, 'ratio')];
    return slope === undefined ? [] : [c.number(path, 'ratio')];
  });
  if (slopes.includes(undefined)) return undefined;
  return slopes.length === 0
    ? { value: 0, from: { path: `${c.floorPath}/room/route`, assumed: true } }
    : greatestOf(c, slopes);
};

/** Distance from the centre of gravity to the nearest edge of the gear. */
const edgeOf = (c: Calculation, at: SectionAt): Known | undefined => {
  const { path } = at;
  return c.run(tippingEdgeSheet, {
    length: c.needed(`${path}/length`, 'length'),
    width: c.needed(`${path}/width`, 'length'),
    base: c.needed(`${path}/gear/base`, 'length'),
    track: c.needed(`${path}/gear/track`, 'length'),
    along: centreOf(c, at, 'along'),
    across: centreOf(c, at, 'across'),
  })?.nearest;
};

/**
 * A section on its gear: how steep it may stand, and how hard it may be pushed at its top.
 *
 * Assumes  it stands across the slope by its worst side: it is turned on the way, and a wheel in a joint is enough
 */
export const tippingAt = (c: Calculation, at: SectionAt) =>
  c.once(`tipping ${at.path}`, (c) => {
    const { path } = at;
    const gear = gearHeight(c, at);
    const edge = edgeOf(c, at);
    const centre = c.needed(`${path}/centre/z`, 'length');
    const outside = edge !== undefined && edge.value <= 0;
    return {
      outside,
      // beyond its wheels there is no slope left to speak of
      tips: outside
        ? undefined
        : c.run(tippingSheet, {
            mass: c.needed(`${path}/mass`, 'mass'),
            edgeDistance: edge,
            height: lengthOfAll(c, [gear, centre]),
            slope: steepest(c),
            pushHeight: lengthOfAll(c, [gear, c.needed(`${path}/height`, 'length')]),
          }),
    };
  });

export const tippingAnswer = (c: Calculation, at: SectionAt): Answer => {
  const { outside, tips } = tippingAt(c, at);
  c.note('TIPPING_MOVER');
  return {
    demand: { value: mostShare, from: { path: `${at.path}/gear`, assumed: true } },
    have: tips?.slopeShare,
    ...(outside ? { verdict: 'short' as const } : {}),
  };
};
