import { drivePaceSheet } from '../../../sheets/rate/drive-pace.ts';
import { indexPeriodSheet } from '../../../sheets/rate/index-period.ts';
import { drivePlaces } from '../../drive-stretch.ts';
import { addedByAir } from '../air/index-delay.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { ZoneAt } from './zones-of.ts';

/** Share by which the drive of the washer stretches its times here; 1 behind an inverter or where either is not known. */
const stretchOf = (c: Calculation, { washer, washerPath }: ZoneAt): Known | undefined => {
  const places = drivePlaces(c.book, c.floorPath, washer.drive);
  if (places === undefined) return { value: 1, from: { path: `${washerPath}/drive` } };
  const rated = c.number(places.rated, 'frequency');
  const here = c.number(places.here, 'frequency');
  if (rated !== undefined && here !== undefined && here.value > 0) {
    return c.run(drivePaceSheet, { rated, here })?.stretch;
  }
  const path = rated === undefined ? places.rated : places.here;
  c.assume(path);
  return { value: 1, from: { path, assumed: true } };
};

/**
 * Index of a washer on this floor when nothing holds it: the shortest, and so the least contact and the least rinse. It
 * comes just after a hold too, when the line catches up.
 */
export const indexHere = (c: Calculation, at: ZoneAt) =>
  c.once(`indexHere ${at.washerPath}`, (c) => {
    const { washer, washerPath } = at;
    const stroke = c.needed(`${washerPath}/stroke`, 'time');
    const dwell = c.needed(`${washerPath}/dwell`, 'time');
    const { added, stalls } = addedByAir(c, washer.cylinders ?? []);
    if (stalls !== undefined) {
      c.miss(`${c.floorPath}/air`);
      return undefined;
    }
    const dwellBy = washer.dwellBy ?? 'timer';
    return c.run(indexPeriodSheet, {
      stroke,
      dwell,
      stretch: stretchOf(c, at),
      dwellBy: { value: dwellBy, from: { path: `${washerPath}/dwellBy` } },
      ...(added === undefined ? {} : { added }),
    });
  });
