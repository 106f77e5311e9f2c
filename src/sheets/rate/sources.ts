import type { Source } from '../frame.ts';

/** Sources that more than one sheet of rate cites. */
export const definition: Source = { title: 'definition', place: 'derived', mark: 'computed' };
export const arithmetic: Source = {
  title: 'hand calculation from the definition',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const maxPlus: Source = {
  title: 'F. Baccelli, G. Cohen, G. J. Olsder, J.-P. Quadrat, Synchronization and Linearity',
  edition: '1992',
  place: 'chapter 3, theorem 3.23: the period is the greatest mean weight of a circuit',
  mark: 'memory',
};
export const lineRecursion: Source = {
  title: 'line of washer, filler and closing station as a max-plus recursion',
  place: 'recursion of 400 blocks and list of loops, worked apart from this program; both agree',
  mark: 'computed',
};
