import type { Source } from '../frame.ts';

export const necRatingsTable: Source = {
  title: 'NEC 240.6(A), standard ampere ratings',
  edition: '2008',
  place: 'public transcription, two copies',
  mark: 'read',
};
export const iecRatingsTable: Source = {
  title: 'usual rated currents of IEC 60898 and IEC 60947-2 devices',
  place: '6 to 250 A',
  mark: 'memory',
};

const breakers = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400, 450,
  500, 600, 700, 800, 1000, 1200, 1600, 2000, 2500, 3000, 4000, 5000, 6000,
];

/** A, rising. */
export const standardRatings = {
  'us-breaker': breakers,
  'us-fuse': [...breakers, 1, 3, 6, 10, 601].sort((a, b) => a - b),
  iec: [6, 10, 13, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250],
} as const satisfies Record<string, readonly number[]>;

export type RatingList = keyof typeof standardRatings;
export const ratingLists = Object.keys(standardRatings) as RatingList[];
