import { indexPeriodSheet } from '../../../sheets/rate/index-period.ts';
import { indexDelay } from '../air/index-delay.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { ZoneAt } from './zones-of.ts';

/** Rated frequency of the drive over that of the floor; 1 behind an inverter or where either is not known. */
const stretchOf = (c: Calculation, { washer, washerPath }: ZoneAt): Known => {
  const drives = c.book.line?.drives ?? [];
  const index = drives.findIndex((drive) => drive.tag === washer.drive);
  const path = index < 0 ? `${washerPath}/drive` : `/line/drives/${index}/frequency`;
  if (index < 0 || drives[index]!.inverter === true) return { value: 1, from: { path } };
  const rated = c.number(path, 'frequency');
  const here = c.number(`${c.floorPath}/power/frequency`, 'frequency');
  if (rated !== undefined && here !== undefined && here.value > 0) {
    return c.derive([rated, here], (plate, floor) => plate / floor)!;
  }
  c.assume(rated === undefined ? path : `${c.floorPath}/power/frequency`);
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
    const delay = indexDelay(c.reader, { floor: c.floor, formatPath: c.formatPath }, washer.cylinders ?? []);
    if (delay.stalls !== undefined) {
      c.miss(`${c.floorPath}/air`);
      return undefined;
    }
    const dwellBy = washer.dwellBy ?? 'timer';
    return c.run(indexPeriodSheet, {
      stroke,
      dwell,
      stretch: stretchOf(c, at),
      dwellBy: { value: dwellBy, from: { path: `${washerPath}/dwellBy` } },
      ...(delay.added === 0
        ? {}
        : { added: { value: delay.added, from: { path: `${washerPath}/cylinders` } } }),
    });
  });
