import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { criticalRatios } from './bounds.ts';
import { gasConstant, normalDensity, normalTemperature } from './dry-air.ts';

/** US valve formula q = 0.978 Cv sqrt(dp p_2), scfm and psi at 20 degC, in m3/(s Pa) for a Cv of 1. */
const perCv = (0.978 * 0.0004719474432) / 6894.757293;
/** Kv of a Cv of 1, m3/h and bar against US gallons and psi. */
const kvOfCv = 0.864978;

/**
 * Sonic conductance of a valve that is stated by its flow coefficient for water.
 *
 * Method   C = 0.978 Cv sqrt((1 - b)/2) in scfm and psi: both formulas agree where little pressure is lost
 * Symbols  Kv  flowCoefficient  scalar  m3/h
 *          b   criticalRatio    scalar  1
 * Returns  m3/(s Pa)
 * Assumes  there is no one factor: 4.0 dm3/(s bar) a Cv at b = 0.3, 3.3 at b = 0.5
 * Cost     O(1)
 * Source   US valve formula, ISO 6358
 */
export const conductanceOf = (flowCoefficient: number, criticalRatio: number): number =>
  (flowCoefficient / kvOfCv) * perCv * Math.sqrt(0.5 * (1 - criticalRatio));

/** Conductance of an ideal nozzle of one square metre, m3/(s Pa). */
const perArea =
  (Math.sqrt(1.4) * (2 / 2.4) ** 3) / Math.sqrt(gasConstant * normalTemperature) / normalDensity;

export const sonicConductanceSheet = defineSheet({
  id: 'air/sonic-conductance',
  version: 1,
  inputs: {
    flowCoefficient: numberField('flowCoefficient', 'K_v', { least: 1e-6, most: 1e4 }),
    criticalRatio: numberField('ratio', 'b', criticalRatios),
  },
  outputs: {
    conductance: numberField('sonicConductance', 'C'),
    effectiveArea: numberField('area', 'S'),
  },
  formula: [
    'C = 0.978\\, C_v \\sqrt{\\frac{1 - b}{2}} \\ (\\mathrm{scfm/psi}), \\quad S = \\frac{C \\rho_n \\sqrt{R T_0}}{\\sqrt{\\gamma} \\left( \\frac{2}{\\gamma + 1} \\right)^{\\frac{\\gamma + 1}{2 (\\gamma - 1)}}}',
  ],
  limits: [
    { code: 'CONDUCTANCE_NO_FACTOR', broken: () => true },
    { code: 'RESTRICTION_NOZZLE', broken: ({ criticalRatio }) => criticalRatio > 0.5 },
  ],
  sources: [
    { title: 'US valve formula and ISO 6358', place: 'made to agree at small losses', mark: 'computed' },
  ],
  compute: (i: { readonly flowCoefficient: number; readonly criticalRatio: number }) => {
    const conductance = conductanceOf(i.flowCoefficient, i.criticalRatio);
    return { conductance, effectiveArea: conductance / perArea };
  },
});
