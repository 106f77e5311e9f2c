import type { PunchPoint } from '../../../proof/punch-points.ts';

/** What a point keeps from being done, gravest first; the class is what its record calls it. */
export const punchKeeps = [
  { keeps: 'all', class: undefined },
  { keeps: 'use', class: 'A' },
  { keeps: 'acceptance', class: 'B' },
  { keeps: 'nothing', class: 'C' },
] as const;

export type PunchKeeps = (typeof punchKeeps)[number]['keeps'];

/** What a point keeps from being done; a class that is none of ours keeps everything, as no class does. */
export const keepsOf = (point: Pick<PunchPoint, 'class'>): PunchKeeps =>
  punchKeeps.find((one) => one.class === point.class)?.keeps ?? 'all';
