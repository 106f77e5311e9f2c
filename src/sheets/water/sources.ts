import type { Source } from '../frame.ts';

/** Sources that more than one sheet of water cites. */
export const iapwsLiquid: Source = {
  title: 'IAPWS SR6-08, Revised Supplementary Release on Properties of Liquid Water at 0.1 MPa',
  edition: '2011',
  place: 'public transcription of its coefficients and of its table of check values',
  mark: 'read',
};
export const iapws95: Source = {
  title: 'IAPWS-95 and IAPWS 2008 viscosity, table at 101.325 kPa',
  place: 'computed with an independent implementation',
  mark: 'computed',
};
export const epanetManual: Source = {
  title: 'EPANET 2.2 User Manual',
  edition: '2.2',
  place: 'chapters 3 and 12, and engine source hydcoeffs.c',
  mark: 'read',
};
export const epanetEngine: Source = {
  title: 'EPANET engine',
  edition: '2.3',
  place: 'run',
  mark: 'computed',
};
export const fluidsLibrary: Source = {
  title: 'fluids, a Python library of fluid dynamics',
  edition: '1.3.1',
  place: 'documented examples',
  mark: 'read',
};
export const hydraulicsVignette: Source = {
  title: 'hydraulics, an R package for teaching',
  edition: '0.7.2',
  place: 'vignette with printed results',
  mark: 'read',
};
export const kvStandard: Source = {
  title: 'IEC 60534-1',
  place: 'definition of the flow coefficient',
  mark: 'memory',
};
export const darcyWeisbach: Source = {
  title: 'Darcy-Weisbach equation with the factor of Colebrook-White',
  place: 'EPANET 2.2 User Manual, chapter 12',
  mark: 'read',
};
export const derived: Source = { title: 'definition or balance', place: 'derived', mark: 'computed' };
export const britannica: Source = {
  title: 'Encyclopaedia Britannica, Hydraulics',
  edition: '11th, 1911',
  place: 'vol. 14, sections 17 and 18 and mouthpieces; public transcription',
  mark: 'read',
};
export const closedForms: Source = {
  title: 'closed form and a general ODE solver',
  place: 'equal to seven digits',
  mark: 'computed',
};
export const columnSolver: Source = {
  title: 'general ODE solver on the rigid column',
  place: 'scipy 1.17, Radau, to 1e-11',
  mark: 'computed',
};
export const arithmetic: Source = {
  title: 'hand calculation from the definition',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const perry: Source = {
  title: "Perry's Chemical Engineers' Handbook",
  edition: '9th',
  place: 'table 2-135, public transcription',
  mark: 'read',
};
export const kvStandardRead: Source = {
  title: 'valve selection handbook, definitions of the flow coefficients',
  place: 'p. 33, public transcription',
  mark: 'read',
};
export const ieValve: Source = {
  title: 'IEC 60534-2-1, worked examples',
  place: 'as documented in the fluids library 1.3.1',
  mark: 'read',
};
export const characteristics: Source = {
  title: 'formula and method of characteristics without friction',
  place: 'independent script',
  mark: 'computed',
};
export const swmmOrifice: Source = {
  title: 'EPA SWMM, note on orifice and weir flow computations',
  place: 'bottom orifice; public transcription',
  mark: 'read',
};
