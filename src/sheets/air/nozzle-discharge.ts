import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { shares, standardAtmospheres, supplyPressures, temperatures } from './bounds.ts';
import { roundArea } from './cylinder-areas.ts';
import { gasConstant, normalDensity } from './dry-air.ts';

/** Ratio of specific heats of air. */
const gamma = 1.4;
/** Pressure ratio at and under which the flow is choked, 0.5283. */
export const criticalRatio = (2 / (gamma + 1)) ** (gamma / (gamma - 1));
const chokedFactor = Math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1)));

/**
 * Mass of air that a hole or nozzle lets through.
 *
 * Method   choked: m = C_d S p_1 sqrt(g/(R T)) (2/(g + 1))^((g + 1)/(2 (g - 1)));
 *          else:   m = C_d S p_1 sqrt(2 g/((g - 1) R T) (r^(2/g) - r^((g + 1)/g))),  r = p_2/p_1
 * Symbols  C_d  coefficient  scalar  1
 *          S    area         scalar  m2
 *          p_1  upstream     scalar  Pa absolute
 *          p_2  downstream   scalar  Pa absolute  <= p_1
 *          T    temperature  scalar  K            upstream
 * Returns  mass flow, kg/s
 * Assumes  ideal gas, isentropic up to the throat
 * Cost     O(1)
 * Source   de Saint-Venant and Wantzel; reproduces the table of discharge within 0.7 %
 */
export const nozzleMassFlow = (
  coefficient: number,
  area: number,
  upstream: number,
  downstream: number,
  temperature: number,
): number => {
  const r = downstream / upstream;
  const scale = (coefficient * area * upstream) / Math.sqrt(gasConstant * temperature);
  if (r <= criticalRatio) return scale * chokedFactor;
  // r^(2/g) - r^((g + 1)/g) = r^(2/g) (1 - r^((g - 1)/g)): as a difference it is lost in rounding near r = 1
  const drop = Math.max(0, -Math.expm1(((gamma - 1) / gamma) * Math.log(r)));
  return scale * r ** (1 / gamma) * Math.sqrt(((2 * gamma) / (gamma - 1)) * drop);
};

export type Choked = 'choked' | 'not choked';

interface NozzleDischargeInputs {
  readonly diameter: number;
  readonly count: number;
  readonly coefficient: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly temperature: number;
  readonly openShare: number;
}

/** 10 psi, from which the first of the rules on cleaning with air speaks. */
const cleaningFrom = 68_948;

export const nozzleDischargeSheet = defineSheet({
  id: 'air/nozzle-discharge',
  version: 1,
  inputs: {
    diameter: numberField('length', 'D', { least: 1e-5, most: 1 }),
    count: numberField('count', 'n', { least: 0, most: 1000, assumed: 1 }),
    coefficient: numberField('ratio', 'C_d', { least: 0.01, most: 1 }),
    pressure: numberField('gaugePressure', 'p_1', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T_1', { ...temperatures, assumed: 293.15 }),
    openShare: numberField('ratio', 'x', { ...shares, assumed: 1 }),
  },
  outputs: {
    flow: numberField('normalAirFlow', 'q'),
    averageFlow: numberField('normalAirFlow', '\\bar q'),
    massFlow: numberField('massFlow', '\\dot m'),
    choked: choiceField<Choked>('\\text{choked}', ['choked', 'not choked']),
  },
  formula: [
    '\\dot m = n C_d S p_1 \\sqrt{\\frac{\\gamma}{R T_1}} \\left( \\frac{2}{\\gamma + 1} \\right)^{\\frac{\\gamma + 1}{2 (\\gamma - 1)}} \\quad \\left( \\frac{p_a}{p_1 + p_a} \\le 0.528 \\right)',
    '\\dot m = n C_d S p_1 \\sqrt{\\frac{2 \\gamma}{(\\gamma - 1) R T_1} \\left( r^{2/\\gamma} - r^{(\\gamma + 1)/\\gamma} \\right)} \\quad \\text{else}',
    'q = \\frac{\\dot m}{\\rho_n}, \\quad \\bar q = x q',
  ],
  limits: [
    { code: 'NOZZLE_COEFFICIENT', broken: () => true },
    { code: 'AIR_CLEANING_RULES', broken: ({ pressure }) => pressure > cleaningFrom },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    {
      title: 'Discharge of air through an orifice, handbook table',
      place: 'public transcription',
      mark: 'read',
    },
  ],
  compute: (i: NozzleDischargeInputs) => {
    const upstream = i.pressure + i.atmosphere;
    const massFlow =
      i.count * nozzleMassFlow(i.coefficient, roundArea(i.diameter), upstream, i.atmosphere, i.temperature);
    const flow = massFlow / normalDensity;
    return {
      flow,
      averageFlow: i.openShare * flow,
      massFlow,
      choked: (i.atmosphere / upstream <= criticalRatio ? 'choked' : 'not choked') as Choked,
    };
  },
});
