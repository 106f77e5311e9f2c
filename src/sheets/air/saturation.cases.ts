import type { SheetCase } from '../sheet-case.ts';
import { ashrae, psychrometricLibrary, script } from './sources.ts';

export const saturationCases: readonly SheetCase[] = [
  ...(
    [
      [-60, 1.08, 5e-3],
      [-20, 103.24, 3e-4],
      [-5, 401.74, 3e-4],
      [5, 872.6, 3e-4],
      [25, 3169.7, 3e-4],
      [50, 12351.3, 3e-4],
      [100, 101418, 3e-4],
    ] as const
  ).map(([celsius, pressure, relative]) => ({
    name: `ASHRAE Fundamentals 2017, table 3, ${celsius} degC`,
    source: ashrae,
    inputs: { temperature: celsius + 273.15 },
    outputs: { pressure },
    tolerance: { relative, reason: 'printed digits; the table is of IAPWS, within 0.03 % of the equation' },
  })),
  {
    name: 'IAPWS-IF97 at 300 K',
    source: {
      title: 'IAPWS-IF97',
      place: 'table 35, as tested in many public repositories',
      mark: 'read',
    },
    inputs: { temperature: 300 },
    outputs: { pressure: 3536.58941 },
    tolerance: { relative: 5e-4, reason: 'agreement of the two equations' },
  },
  {
    name: 'IAPWS sublimation pressure at 230 K',
    source: {
      title: 'IAPWS release on melting and sublimation',
      place: 'table 3, as tested in a public implementation',
      mark: 'read',
    },
    inputs: { temperature: 230 },
    outputs: { pressure: 8.94735 },
    tolerance: { relative: 5e-4, reason: 'agreement of the two equations' },
  },
  ...(
    [
      [3, 758.0312],
      [25, 3169.2165],
      [-20, 103.2604],
    ] as const
  ).map(([celsius, pressure]) => ({
    name: `a psychrometric library at ${celsius} degC`,
    source: psychrometricLibrary,
    inputs: { temperature: celsius + 273.15 },
    outputs: { pressure },
    tolerance: { relative: 1e-6, reason: 'the same equation: it checks the coding, not the physics' },
  })),
  ...(
    [
      [34, 37.66],
      [30, 30.43],
      [20, 17.33],
      [10, 9.42],
      [0, 4.86],
      [-10, 2.16],
    ] as const
  ).map(([celsius, grams]) => ({
    name: `vapour in saturated air, CRC Handbook, ${celsius} degC`,
    source: {
      title: 'CRC Handbook of Chemistry and Physics',
      edition: '62nd',
      place: 'mass of water vapour in saturated air, public transcription',
      mark: 'read' as const,
    },
    inputs: { temperature: celsius + 273.15 },
    outputs: { vapourDensity: grams / 1000 },
    tolerance: { relative: 1.1e-2, reason: 'the handbook counts the enhancement by air, 0.2 to 1 % more' },
  })),
  ...(
    [
      [-70, 0.2618, 0.0028],
      [-40, 12.845, 0.1194],
      [0, 611.15, 4.848],
      [7, 1001.96, 7.749],
      [40, 7383.46, 51.087],
      [60, 19943.8, 129.71],
    ] as const
  ).map(([celsius, pressure, grams]) => ({
    name: `pressure and mass of vapour at ${celsius} degC`,
    source: script,
    inputs: { temperature: celsius + 273.15 },
    outputs: { pressure, vapourDensity: grams / 1000 },
    tolerance: { relative: 5e-3, absolute: 1e-7, reason: 'printed digits' },
  })),
  ...(
    [
      [-40, 19.05],
      [-20, 125.6],
      [-10, 286.6],
      [-5, 421.8],
    ] as const
  ).map(([celsius, pressure]) => ({
    name: `over supercooled water at ${celsius} degC`,
    source: script,
    inputs: { temperature: celsius + 273.15, surface: 'water' },
    outputs: { pressure },
    tolerance: { relative: 5e-4, reason: 'four printed digits' },
    notes: ['SATURATION_SUPERCOOLED'],
  })),
];
