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
  title: 'line of washer, filler and closing station, recursion of its events and list of its loops',
  place: 'independent script; eight sets of times, both ways agree',
  mark: 'computed',
};
export const taktExample: Source = {
  title: 'course on balancing a production system, example of takt time',
  place: 'example 1: 820 min a day for 80 units is 10.25 min each; public transcription',
  mark: 'read',
};
export const storageManual: Source = {
  title: 'manual of a state for the design of water systems, equalising storage',
  edition: 'December 2009',
  place: 'p. 61: (demand less source) times 150 min; public transcription',
  mark: 'read',
};
