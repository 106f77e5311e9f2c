import type { Source } from '../frame.ts';

/** Sources that more than one sheet of air cites. */
export const iso6358: Source = {
  title: 'ISO 6358, flow-rate characteristics of pneumatic components',
  edition: '1989 form, formula as a textbook and a data sheet print it',
  place: 'sonic conductance and critical pressure ratio; public transcription',
  mark: 'read',
};
export const iso6358Series: Source = {
  title: 'ISO 6358-3, calculation of the flow of assemblies',
  edition: '2014',
  place: 'abstract; the numerical technique that it names',
  mark: 'read',
};
export const iso8573: Source = {
  title: 'ISO 8573-1, compressed air purity classes',
  edition: '2010',
  place: 'table of classes, three public reproductions that agree',
  mark: 'read',
};
export const ashrae: Source = {
  title: 'ASHRAE Handbook Fundamentals',
  edition: '2017',
  place: 'chapter 1, coefficients and table 3, as the tests of a public psychrometric library quote them',
  mark: 'read',
};
export const ashraeAtmosphere: Source = {
  title: 'ASHRAE Handbook Fundamentals',
  edition: '2017',
  place: 'chapter 1, table 1, as the tests of a public psychrometric library quote it',
  mark: 'read',
};
export const psychrometricLibrary: Source = {
  title: 'psychrolib, a library of psychrometric functions',
  edition: '1.1.1',
  place: 'run',
  mark: 'computed',
};
export const dryerManualA: Source = {
  title: 'manual of a refrigerated dryer rated at 38 degC inlet, 38 degC ambient, 7 bar(g), +3 degC',
  place: 'section 4.5, p. 11, public transcription',
  mark: 'read',
};
export const dryerManualB: Source = {
  title: 'manual of a refrigerated dryer rated at 35 degC inlet, 25 degC ambient, 7 bar(g), +3 degC',
  place: 'section 2.5, p. 10, public transcription',
  mark: 'read',
};
export const foodGuideline: Source = {
  title: 'food trade guideline for compressed air',
  edition: 'older and newer edition',
  place: 'classes for direct and indirect contact, second hand',
  mark: 'read',
};
export const idealGas: Source = { title: 'ideal gas law', place: 'derived', mark: 'computed' };
export const derived: Source = { title: 'definition or balance', place: 'derived', mark: 'computed' };
/** The rows of check cases that an independent script worked from the written formula. */
export const script: Source = {
  title: 'independent script',
  place: 'worked from the written formula, apart from this program',
  mark: 'computed',
};
export const twoSolutions: Source = {
  title: 'two independent formulations of the differential equations',
  place: 'solved by a general ODE solver',
  mark: 'computed',
};
export const fluidsLibrary: Source = {
  title: 'fluids, a Python library of fluid dynamics',
  edition: '1.3.1',
  place: 'run',
  mark: 'computed',
};
export const cylinderArticle: Source = {
  title: 'Cylinder air consumption rates, article of a dealer in automation parts',
  place: 'worked example, 2 in bore',
  mark: 'read',
};
export const freeAirArticle: Source = {
  title: 'Compressed air flow units: SCFM, ACFM and FAD',
  place: 'table of reference states, public transcription',
  mark: 'read',
};
