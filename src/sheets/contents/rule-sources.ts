import type { Source } from '../frame.ts';

/** The rules of net contents, each with what of it was read and where. */
export const oimlTransposed: Source = {
  title: 'OIML R 87, as transposed in the National Trade Measurement Regulations, Australia',
  edition: '2009, R 87:2004',
  place: 'regulations 4.34 and 4.36, public transcription',
  mark: 'read',
};
export const oimlNewZealand: Source = {
  title: 'OIML R 87, as transposed in the Weights and Measures Regulations 1999, New Zealand, SR 1999/373',
  edition: 'as amended',
  place: 'schedule 7A, public transcription',
  mark: 'read',
};
export const oimlExamples: Source = {
  title: 'Examples of average quantity system testing, National Measurement Institute, Australia',
  place: 'butter and wine, public page',
  mark: 'read',
};
export const euDirective: Source = {
  title: 'Directive 76/211/EEC',
  edition: 'as amended, without its consolidation by states',
  place: 'Annex I 2.4; Annex II 2.1 to 2.3',
  mark: 'read',
};
export const euItalian: Source = {
  title: 'Decree 690/1978, Italy, transposing Directive 76/211/EEC',
  place: 'Annex I',
  mark: 'read',
};
export const ukRegulations: Source = {
  title: 'Weights and Measures (Packaged Goods) Regulations 2006, United Kingdom, SI 2006/659',
  edition: 'as made',
  place: 'schedule 2, paragraphs 2 to 4',
  mark: 'read',
};
export const ukErrors: Source = {
  title: 'Weights and Measures (Packaged Goods) Regulations 2006, United Kingdom, SI 2006/659',
  place: 'schedule 3, not read; the figures are those of Directive 76/211/EEC',
  mark: 'memory',
};
export const handbookText: Source = {
  title: 'NIST Handbook 133',
  edition: '2026',
  place: 'chapter 2, public transcription',
  mark: 'read',
};
export const handbookTable: Source = {
  title: 'NIST Handbook 133',
  place: 'table 2-1, category A, not read',
  mark: 'memory',
};
export const studentFactors: Source = {
  title: 'Student quantile over the root of n',
  place: 'independent script',
  mark: 'computed',
};
export const ruleArithmetic: Source = {
  title: 'the rule by hand',
  place: 'independent script',
  mark: 'computed',
};
export const measuringContainers: Source = {
  title: 'OIML R 138, Vessels for commercial transactions',
  edition: '2007',
  place: '5.1.2 and annex A, public transcription',
  mark: 'read',
};
