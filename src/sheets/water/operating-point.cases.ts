import type { SheetCase } from '../sheet-case.ts';
import { epanetEngine, hydraulicsVignette } from './sources.ts';

/** 60 m of 40 mm at 1 mm2/s with fittings of K 5, against 15 m, and a pump of 32, 28 and 14 m at 0, 2 and 4 L/s. */
const threePointSystem = {
  shutOffHead: 32,
  factor: 4 / 0.002 ** (Math.log(18 / 4) / Math.LN2),
  exponent: Math.log(18 / 4) / Math.LN2,
  staticHead: 15,
  bore: 0.04,
  length: 60,
  roughness: 0.000045,
  fittings: 5,
  density: 1000,
  viscosity: 1e-3,
};

/** 0.160 ft over the square of ft3/s, written as a loss coefficient on a bore of 0.5 m. */
const publishedSystem = {
  bore: 0.5,
  length: 0,
  roughness: 0,
  fittings: 45.98917519,
  density: 1000,
  viscosity: 1e-3,
};

export const operatingPointCases: readonly SheetCase[] = [
  {
    name: 'three-point pump against 15 m and 60 m of 40 mm, rated speed',
    source: {
      title: 'Darcy-Weisbach with Colebrook-White, general root finder',
      place: 'independent script; EPANET engine 2.7006 L/s with Swamee-Jain',
      mark: 'computed',
    },
    inputs: { ...threePointSystem, speedRatio: 1 },
    outputs: {
      flow: 0.002705,
      head: 24.3,
      leastSpeedRatio: 0.6847,
      residual: 0,
      hydraulicPower: 1000 * 9.80665 * 0.002705 * 24.3,
    },
    tolerance: { relative: 3e-4, absolute: 1e-9, reason: 'four printed digits' },
  },
  {
    name: 'the same at 60 Hz: 3.663 L/s, not 1.2 times 2.705',
    source: {
      title: 'Darcy-Weisbach with Colebrook-White, general root finder',
      place: 'independent script; EPANET engine 3.6576 L/s with Swamee-Jain',
      mark: 'computed',
    },
    inputs: { ...threePointSystem, speedRatio: 1.2 },
    outputs: { flow: 0.003663, head: 31.66 },
    tolerance: { relative: 3e-4, reason: 'four printed digits' },
  },
  {
    name: 'EPANET engine on the same system, rated speed',
    source: epanetEngine,
    inputs: { ...threePointSystem, speedRatio: 1 },
    outputs: { flow: 0.0027006, head: 24.325 },
    tolerance: { relative: 3e-3, reason: 'Swamee-Jain and g = 9.8146 m/s2 in the engine' },
  },
  {
    name: 'EPANET engine on the same system, 1.2 times the speed',
    source: epanetEngine,
    inputs: { ...threePointSystem, speedRatio: 1.2 },
    outputs: { flow: 0.0036576, head: 31.709 },
    tolerance: { relative: 3e-3, reason: 'Swamee-Jain and g = 9.8146 m/s2 in the engine' },
  },
  {
    name: 'published operating point, curve a + c Q^2 by least squares: 12.051 ft3/s at 53.285 ft',
    source: hydraulicsVignette,
    inputs: {
      shutOffHead: 25.13604891,
      factor: 76.38086428,
      exponent: 2,
      staticHead: 9.144,
      ...publishedSystem,
    },
    outputs: { flow: 0.341246318, head: 16.241268 },
    tolerance: {
      relative: 1e-3,
      reason: 'the source rounds its system to 0.160; 0.1603 would give its printed point',
    },
  },
  {
    name: 'the same points with the power function through them: 12.324 ft3/s at 54.33 ft',
    source: {
      title: 'power function through the points, general root finder',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: {
      shutOffHead: 24.6888,
      factor: 97.89689256,
      exponent: 2.364019204,
      staticHead: 9.144,
      ...publishedSystem,
    },
    outputs: { flow: 0.348976817, head: 16.559784 },
    tolerance: {
      relative: 5e-4,
      reason: 'the source rounds its system to 0.160; 0.1603 would give its printed point',
    },
  },
];
