import type { Source } from '../frame.ts';
import type { SheetCase } from '../sheet-case.ts';

const massProcedures: Source = {
  title: 'NIST procedures of mass calibration, air density by the equation of 1978',
  place: 'appendix B, examples 1 and 3; public transcription in tests of a calibration library',
  mark: 'read',
};
const cipm: Source = {
  title: 'CIPM-2007 formula for the density of moist air',
  place:
    'example of a textbook of mass metrology, p. 205; public transcription in tests of a calibration library',
  mark: 'read',
};
/** 760 mmHg are an atmosphere. */
const millimetre = 101325 / 760;

export const airDensityCases: readonly SheetCase[] = [
  {
    name: 'NIST mass procedures, example 1: 22.3 degC, 748.1 mmHg, 37 %: 1.17194 mg/cm3',
    source: massProcedures,
    inputs: { pressure: 748.1 * millimetre, temperature: 295.45, humidity: 0.37 },
    outputs: { density: 1.17194 },
    tolerance: { relative: 2e-4, reason: 'what the short formula promises inside its range' },
  },
  {
    name: 'NIST mass procedures, example 3: 23.4 degC, 612.3 mmHg, 23 %: 0.95632 mg/cm3',
    source: massProcedures,
    inputs: { pressure: 612.3 * millimetre, temperature: 296.55, humidity: 0.23 },
    outputs: { density: 0.95632 },
    tolerance: { relative: 2e-4, reason: 'as inside the range, although this is far up a mountain' },
    notes: ['AIR_DENSITY_RANGE'],
  },
  {
    name: 'CIPM-2007 at 10 degC, 730 mmHg, 40 %: 1.19569 mg/cm3',
    source: cipm,
    inputs: { pressure: 730 * millimetre, temperature: 283.15, humidity: 0.4 },
    outputs: { density: 1.19569 },
    tolerance: { relative: 2.5e-4, reason: 'the short formula promises 2e-4, the example prints six digits' },
  },
];
