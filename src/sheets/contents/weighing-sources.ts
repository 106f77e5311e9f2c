import type { Source } from '../frame.ts';

/** Sources that the sheets of weighing cite. */
export const buoyancy: Source = {
  title: 'balance of forces on a weighing in air; the form is that of ISO 4787 and ISO 8655-6',
  place: 'derived, standards not read',
  mark: 'computed',
};
export const moistAirShort: Source = {
  title: 'OIML R 111-1, approximate formula for the density of moist air',
  place: 'annex E, not read',
  mark: 'memory',
};
export const weighingScript: Source = {
  title: 'balance of forces with water densities of Tanaka et al., Metrologia 38, 2001, 301',
  place: 'independent script',
  mark: 'computed',
};
export const expansionDefinition: Source = {
  title: 'definition of cubic expansion and conservation of mass',
  place: 'derived',
  mark: 'computed',
};
export const geometry: Source = { title: 'geometry', place: 'derived', mark: 'computed' };
export const guideToUncertainty: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: '4.3 and 5.1.2, not read',
  mark: 'memory',
};
