import type { Source } from '../frame.ts';

/** Sources that more than one sheet of hygiene cites. The rules name their own. */
export const derived: Source = { title: 'definition or balance', place: 'derived', mark: 'computed' };
/** The rows of check cases that an independent script worked from the written formula. */
export const script: Source = {
  title: 'independent script',
  place: 'worked from the written formula, apart from this program',
  mark: 'computed',
};
export const epaTables: Source = {
  title: 'EPA 815-R-20-003, Disinfection profiling and benchmarking',
  edition: '2020',
  place: 'appendix B, CT tables, through an open-source transcription',
  mark: 'read',
};
export const epaLookUp: Source = {
  title: 'guide to the CT tables of the US EPA',
  place: 'worked look-ups, public transcription',
  mark: 'read',
};
export const ctInterpolation: Source = {
  title: 'note on a function that interpolates the CT tables',
  place: 'example of 4-log viruses at 2 degC, public page',
  mark: 'read',
};
export const cfr141: Source = {
  title: '40 CFR 141.534',
  place: 'inactivation ratio times 3 for Giardia; public transcription',
  mark: 'read',
};
export const disinfectionTextbook: Source = {
  title: 'Water and wastewater engineering: design principles and practice',
  place: 'example 13-4, p. 13-15, public transcription',
  mark: 'read',
};
export const ozoneArticle: Source = {
  title: 'Frontiers in Microbiology 14:1258381',
  edition: '2024',
  place: 'abstract: lower 95 % bound for several species in purified water at 21 degC',
  mark: 'read',
};
export const rinseArticle: Source = {
  title: 'articles of a maker of tanks on rinsing with less water',
  place: 'worked examples, public pages',
  mark: 'read',
};
export const cdcDilution: Source = {
  title: 'CDC, chlorine disinfectant in settings of few resources',
  place: 'appendix E, worked dilutions',
  mark: 'read',
};
export const chlorineLiterature: Source = {
  title: 'trade literature that quotes a handbook of chlorination of 1972',
  place: 'strengths of hypochlorite',
  mark: 'read',
};
export const acidConstant: Source = {
  title: 'chemistry question on hypochlorous acid',
  place: 'Ka = 2.7e-8 at 20 degC, public page',
  mark: 'read',
};
export const neutralisation: Source = {
  title: 'two-indicator titration of caustic and carbonate',
  place: 'phenolphthalein (about pH 8.3) and methyl orange (about pH 4.3), worked from the equivalents',
  mark: 'computed',
};
export const pasteurisationBase: Source = {
  title: 'dictionary of units, pasteurisation unit',
  place: '1.393 to the power of (T - 60), public page',
  mark: 'read',
};
export const pasteurisationZ: Source = {
  title: 'articles of makers of pasteurisation instruments',
  place: 'z = 7 K; doubt below about 50 degC, public pages',
  mark: 'read',
};
export const sterilisationArticle: Source = {
  title: 'article on the F0 value',
  place: 'definition and worked example, public transcription',
  mark: 'read',
};
export const washerManual: Source = {
  title: 'manual of a washer-disinfector that cites EN ISO 15883-1',
  place: 'A0, p. 26, public transcription',
  mark: 'read',
};
export const dValueArticle: Source = {
  title: 'article on heat processing of food',
  place: 'D 10 min at 235 degF and 0.1 min at 270 degF, public page',
  mark: 'read',
};
export const causticOrdinance: Source = {
  title: 'US milk ordinance, bottle washer item',
  place: 'table of caustic, time and temperature of equal bactericidal value; not confirmed',
  mark: 'memory',
};
export const rinseShortcut: Source = {
  title: 'article of a maker of plating equipment on rinse water',
  place: 'r = (c0/cn)^(1/n) + 1/n, public page',
  mark: 'read',
};
