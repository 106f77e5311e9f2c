import type { Source } from '../frame.ts';

/** Sources that the sheets of setting the fill cite. */
export const leastSquaresTheory: Source = {
  title: 'least squares of a straight line; the form is that of JCGM 100:2008, H.3',
  place: 'derived, H.3 read in a public transcription',
  mark: 'computed',
};
export const guideLine: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: 'H.3, calibration of a thermometer; data and results in a public transcription',
  mark: 'read',
};
export const guideCombined: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: '5.1.2 and annex G.4 (Welch and Satterthwaite), not read',
  mark: 'memory',
};
export const guideGauge: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: 'H.1, end gauge: contributions and effective degrees of freedom, public transcription',
  mark: 'read',
};
export const guideCorrelated: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: 'H.2, resistance and reactance: values, uncertainties and correlations, public transcription',
  mark: 'read',
};
export const meanTheory: Source = {
  title: 'mean of like readings with Student’s quantile',
  place: 'derived',
  mark: 'computed',
};
export const eurachem: Source = {
  title: 'Eurachem/CITAC Guide, Quantifying uncertainty in analytical measurement',
  place: 'example A1, a standard made up in a flask; public transcription',
  mark: 'read',
};
export const handbook = (place: string): Source => ({
  title: 'NIST/SEMATECH e-Handbook of Statistical Methods',
  place: `${place}; second hand, as quoted in public test files that agree`,
  mark: 'read',
});
export const referenceSets = (place: string): Source => ({
  title: 'NIST Statistical Reference Datasets (StRD)',
  place: `${place}, certified values in a public transcription`,
  mark: 'read',
});
export const statisticsScript: Source = {
  title:
    'the same question put to numpy 2 and scipy 1.17 in another way (matrices, root search, minimum of the cost)',
  place: 'independent script',
  mark: 'computed',
};
export const laneScript: Source = {
  title: 'twelve invented fills of one lane, line by hand formulas',
  place: 'independent script',
  mark: 'computed',
};
export const presetTheory: Source = {
  title: 'normal distribution of what is delivered less what the bottle holds',
  place: 'derived',
  mark: 'computed',
};
export const shewhart: Source = {
  title: 'Shewhart constants',
  place:
    'computed by integration; A2, D3, D4 of n = 2 to 5 agree with printed tables in a public transcription',
  mark: 'read',
};
export const gaugeManual: Source = {
  title: 'measurement system analysis, average and range method',
  place: 'form and the limits of 10 % and 30 % from memory; factors computed',
  mark: 'memory',
};
