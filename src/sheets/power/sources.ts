import type { Source } from '../frame.ts';

/** Sources that more than one sheet of power cites. The tables name their own. */
export const arithmetic: Source = {
  title: 'hand calculation from the definition',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const circuitTheory: Source = {
  title: 'three-phase circuit theory',
  place: 'definition, derived',
  mark: 'computed',
};
export const necMotorArticle: Source = {
  title: 'NFPA 70, National Electrical Code (NEC)',
  edition: '2008',
  place: '430.22, 430.24, 430.32, 430.52, 430.62 and 430.63, public transcription',
  mark: 'read',
};
export const necMachineryArticle: Source = {
  title: 'NFPA 70, National Electrical Code (NEC)',
  edition: '2008',
  place: '670.4(A), public transcription; 670.4(C) from memory',
  mark: 'read',
};
export const necStudyNotes: Source = {
  title: 'public study notes on NEC article 430',
  edition: 'NEC 2014',
  place: '7 1/2 hp at 230 V: 22 A, 27.5 A',
  mark: 'read',
};
export const journeymanTest: Source = {
  title: 'public practice test for electricians',
  edition: 'NEC 2014',
  place: 'motor questions',
  mark: 'read',
};
export const necExampleD8: Source = {
  title: 'NEC annex D, example D8',
  edition: '2008',
  place: 'inputs and answers from memory, every step worked anew from the rules read',
  mark: 'computed',
};
export const feederDiscussion: Source = {
  title: 'public discussion of a motor feeder by electricians',
  edition: 'NEC 430.24 and 430.62',
  place: '480 V, motors of 124, 124, 77 and 11 A',
  mark: 'read',
};
export const machineExample: Source = {
  title: 'machine supply of four motors and a heater at 208 V',
  place: 'worked apart from this program; rule of the conductor read, of the device from memory',
  mark: 'computed',
};
export const switchgearAppendix: Source = {
  title: 'handbook of low-voltage switchgear, appendix on motor currents at 400 V',
  edition: 'IEC 60947',
  place: 'public transcription, p. 21',
  mark: 'read',
};
export const effectOfVoltage: Source = {
  title: 'table of the effect of voltage and frequency on induction motors',
  place: 'public transcription',
  mark: 'read',
};
export const pointToPointMethod: Source = {
  title: 'point-to-point method of calculating fault currents',
  place: 'formulas and worked example, public transcription',
  mark: 'read',
};
export const independentScript: Source = {
  title: 'complex impedances in an independent script',
  place: 'stated inputs',
  mark: 'computed',
};
