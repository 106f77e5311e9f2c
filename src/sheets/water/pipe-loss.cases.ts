import type { SheetCase } from '../sheet-case.ts';
import { fluidsLibrary, hydraulicsVignette } from './sources.ts';

export const pipeLossCases: readonly SheetCase[] = [
  {
    name: 'fluids, 10 kg/s in a smooth pipe of 0.1 m',
    source: fluidsLibrary,
    inputs: { flow: 0.01, bore: 0.1, length: 1, roughness: 0, fittings: 0, density: 1000, viscosity: 1e-5 },
    outputs: { loss: 63.4345 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
  {
    name: 'published pipe head loss in US units: 4 ft3/s, 20 in, 10 560 ft, 5.72 ft',
    source: hydraulicsVignette,
    inputs: {
      flow: 0.113267,
      bore: 0.508,
      length: 3218.69,
      roughness: 0.0001524,
      fittings: 0,
      density: 1000,
      viscosity: 1.14184e-3,
    },
    outputs: { headLoss: 1.7435, reynolds: 248625 },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  },
  {
    name: 'laminar tube of 4 mm at 5 degC, a metre of it',
    source: { title: 'Hagen-Poiseuille', place: 'hand calculation', mark: 'computed' },
    inputs: {
      flow: 0.005e-3,
      bore: 0.004,
      length: 1,
      roughness: 1.5e-6,
      fittings: 0,
      density: 999.967,
      viscosity: 1.51822e-6 * 999.967,
    },
    outputs: { velocity: 0.39789, reynolds: 1048.3, headLoss: 0.1232, loss: 1208.1 },
    tolerance: { relative: 1e-3, reason: 'printed digits' },
  },
  {
    name: 'hook-up at 10 degC: 2.5 m3/h through 18 m of galvanised 27.3 mm with ten fittings',
    source: {
      title: 'Darcy-Weisbach with Colebrook-White',
      place: 'independent script; EPANET engine 0.9 % higher with Swamee-Jain',
      mark: 'computed',
    },
    inputs: {
      flow: 2.5 / 3600,
      bore: 0.0273,
      length: 18,
      roughness: 0.00015,
      fittings: 9.8,
      density: 999.703,
      viscosity: 1305.9e-6,
    },
    outputs: {
      velocity: 1.1864,
      reynolds: 24794,
      headLoss: 2.335,
      loss: 22890,
      straightLoss: 16000,
      fittingLoss: 6892,
    },
    tolerance: { relative: 1e-3, reason: 'printed digits' },
  },
];
