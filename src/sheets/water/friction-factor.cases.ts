import type { SheetCase } from '../sheet-case.ts';
import { epanetEngine, fluidsLibrary, hydraulicsVignette } from './sources.ts';

export const frictionFactorCases: readonly SheetCase[] = [
  {
    name: 'fluids, Re 1e5, roughness 1e-4, Colebrook',
    source: fluidsLibrary,
    inputs: { reynolds: 1e5, relativeRoughness: 1e-4, law: 'colebrook' },
    outputs: { frictionFactor: 0.018513866 },
    tolerance: { relative: 1e-7, reason: 'printed digits' },
  },
  {
    name: 'fluids, Re 1e5, roughness 1e-4, Swamee-Jain',
    source: fluidsLibrary,
    inputs: { reynolds: 1e5, relativeRoughness: 1e-4, law: 'swamee-jain' },
    outputs: { frictionFactor: 0.018452424 },
    tolerance: { relative: 1e-5, reason: 'the library rounds a constant of the formula otherwise' },
  },
  {
    name: 'published pipe head loss in US units, Re 248 625',
    source: hydraulicsVignette,
    inputs: { reynolds: 248625, relativeRoughness: 0.0003, law: 'colebrook' },
    outputs: { frictionFactor: 0.0173 },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  },
  {
    name: 'solved by a general root finder between laminar and turbulent, Re 4 000',
    source: {
      title: 'Colebrook-White by a bracketing root finder',
      place: 'independent script',
      mark: 'computed',
    },
    inputs: { reynolds: 4000, relativeRoughness: 0.00225, law: 'colebrook' },
    outputs: { frictionFactor: 0.042133 },
    tolerance: { relative: 2e-5, reason: 'five printed digits' },
  },
  {
    name: 'cubic with the value and slope of Colebrook, Re 3 000',
    source: { title: 'cubic from its four end conditions', place: 'independent script', mark: 'computed' },
    inputs: { reynolds: 3000, relativeRoughness: 0.00225, law: 'colebrook' },
    outputs: { frictionFactor: 0.033748 },
    tolerance: { relative: 2e-5, reason: 'five printed digits' },
    notes: ['FRICTION_TRANSITION'],
  },
  ...(
    [
      [636.62, 0.10053],
      [2000, 0.032],
      [2228.17, 0.029602],
      [2546.48, 0.029729],
      [3000, 0.034272],
      [3501.41, 0.040684],
      [4000, 0.04307],
      [5092.96, 0.040402],
      [12732.4, 0.032998],
    ] as const
  ).map(([reynolds, frictionFactor]) => ({
    name: `EPANET engine through the transition, Re ${reynolds}`,
    source: epanetEngine,
    inputs: { reynolds, relativeRoughness: 0.00225, law: 'swamee-jain' },
    outputs: { frictionFactor },
    tolerance: { relative: 5e-4, reason: 'head loss printed by the engine, turned back with its own g' },
  })),
];
