import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import type { ZoneAt } from './zones-of.ts';

/**
 * Liquid that a bottle carries on after its draining, where nobody weighed it: 2 to 5 mL of a bottle up to a litre, 10 to
 * 30 mL of a jug of 19 L; common practice. Between them with the root of the volume.
 */
const ofALitre = 3.5e-6;

export const carryOver = (c: Calculation, { washerPath }: ZoneAt): Known => {
  const brimful = c.number(`${c.formatPath}/brimful`, 'volume');
  return c.numberOr(
    `${washerPath}/carryOver`,
    'volume',
    ofALitre * Math.sqrt((brimful?.value ?? 1e-3) / 1e-3),
  );
};
