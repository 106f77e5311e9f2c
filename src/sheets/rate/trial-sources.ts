import type { Source } from '../frame.ts';

/** Sources that the sheets of stops, room and short trials cite. */
export const statisticsScript: Source = {
  title: 'quantiles and tails of scipy 1.17 put into the textbook form',
  place: 'independent script',
  mark: 'computed',
};
export const chainScript: Source = {
  title:
    'Markov chain of the two stations and the room, written state by state and solved as linear equations',
  place: 'independent script',
  mark: 'computed',
};
export const birthDeathScript: Source = {
  title: 'birth and death chain summed with 40 digits',
  place: 'independent script',
  mark: 'computed',
};
export const queueTheory: Source = {
  title: 'waiting lines with one server and with several, Little’s law',
  place: 'birth and death equations, derived',
  mark: 'computed',
};
export const runsTable: Source = {
  title: 'textbook of simulation, bank with five tellers, ten runs',
  place: 'ten mean delays read in a public transcription; mean and interval computed from them by scipy 1.17',
  mark: 'computed',
};
export const handbook = (place: string): Source => ({
  title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
  place: `${place}, read in a public transcription`,
  mark: 'read',
});
export const equipmentFigures: Source = {
  title: 'ISO 22400-2, key performance indicators for manufacturing operations management',
  place: 'elements APT, PBT, PRI, PQ, GQ and their quotients; formulas in a public transcription',
  mark: 'read',
};
export const packagingLines: Source = {
  title: 'F. L. Härte, Efficiency Analysis of Packaging Lines, Delft University Press',
  edition: '1997',
  place: '3.4, accumulation and the V-graph; public transcription',
  mark: 'read',
};
export const statisticsTheory: Source = {
  title: 'Student’s interval of a mean of independent normal values',
  place: 'textbook form',
  mark: 'memory',
};
export const binomialTheory: Source = {
  title: 'binomial distribution of the bad ones among independent trials',
  place: 'derived; without a bad one, about three over the share at 95 %',
  mark: 'computed',
};
export const stopsTheory: Source = {
  title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
  place: '8.4.5.1, limits of a mean time between failures; form in a public transcription',
  mark: 'read',
};
export const renewal: Source = {
  title: 'alternating renewal process, variance of the share of time running',
  place: 'formula recalled; 40 000 simulated runs spread by 0.01637, the formula says 0.01643',
  mark: 'computed',
};
