import type { SheetCase } from '../sheet-case.ts';
import { ashraeAtmosphere, psychrometricLibrary, script } from './sources.ts';

const cubicMetre = 1 / 60;
const site = {
  demand: cubicMetre,
  counting: 'humidity counted',
  altitude: 1500,
  temperature: 303.15,
  relativeHumidity: 0.5,
  delivery: 1.5 * cubicMetre,
};

export const compressorCapacityCases: readonly SheetCase[] = [
  ...(
    [
      [0, 101325],
      [500, 95461],
      [1000, 89875],
      [4000, 61640],
    ] as const
  ).map(([altitude, atmosphere]) => ({
    name: `ASHRAE Fundamentals 2017, table 1, ${altitude} m`,
    source: ashraeAtmosphere,
    inputs: { ...site, altitude },
    outputs: { atmosphere },
    tolerance: { absolute: 1, reason: 'printed whole pascals; six digits of the constants' },
  })),
  {
    name: 'a psychrometric library at 1500 m',
    source: psychrometricLibrary,
    inputs: site,
    outputs: { atmosphere: 84555.93 },
    tolerance: { absolute: 2, reason: 'the exponents differ in the fifth digit' },
  },
  {
    name: '1 m3/min of ANR with its humidity at 1500 m, 30 degC, 50 %: 1.235 m3/min',
    source: script,
    inputs: site,
    outputs: { freeAirNeeded: 1.235 * cubicMetre, dryMassFlow: 1.1703 * cubicMetre },
    tolerance: { relative: 3e-3, reason: 'as the reference states it' },
    notes: ['AIR_REFERENCE_HUMID', 'COMPRESSOR_ALTITUDE'],
  },
  {
    name: 'the same with the humidity of the intake left out: 1.204 m3/min',
    source: script,
    inputs: { ...site, relativeHumidity: 0 },
    outputs: { freeAirNeeded: 1.204 * cubicMetre },
    tolerance: { relative: 3e-3, reason: 'as the reference states it' },
  },
  {
    name: 'at the sea, 35 degC and 80 %: 1.069 m3/min',
    source: script,
    inputs: { ...site, altitude: 0, temperature: 308.15, relativeHumidity: 0.8 },
    outputs: { freeAirNeeded: 1.069 * cubicMetre },
    tolerance: { relative: 3e-3, reason: 'as the reference states it' },
  },
  {
    name: 'allowances by hand: 1.2355 x 1.1 x 1.1/0.7 to install, load 1.2355 x 1.1/1.5, gives 1.5/1.2355',
    source: { title: 'hand calculation', place: 'from the free air of the case at 1500 m', mark: 'computed' },
    inputs: site,
    outputs: {
      installedNeeded: 2.1356 * cubicMetre,
      loadShare: 0.90603,
      capacity: 1.21408 * cubicMetre,
    },
    tolerance: { relative: 5e-4, reason: 'the free air has four digits' },
    notes: ['COMPRESSOR_NO_RESERVE', 'COMPRESSOR_ALLOWANCES', 'CAUTION_COMPRESSED_AIR'],
  },
];
