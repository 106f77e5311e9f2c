import type { Problem } from '../../quantity/problem.ts';
import { brentRoot } from '../brent-root.ts';
import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { frictionFactor, laminarBelow, turbulentAbove } from '../water/friction-factor.ts';
import { roughnessProblems } from '../water/roughness-problems.ts';
import {
  bores,
  lengths,
  normalFlows,
  roomTemperatures,
  standardAtmospheres,
  supplyPressures,
} from './bounds.ts';
import { roundArea } from './cylinder-areas.ts';
import { gasConstant, normalDensity } from './dry-air.ts';

/**
 * Viscosity of air.
 *
 * Method   mu = 1.716e-5 (T/273.15)^1.5 (273.15 + 110.4)/(T + 110.4)
 * Symbols  T  temperature  scalar  K
 * Returns  Pa s, good to about 2 % from 200 to 800 K
 * Cost     O(1)
 * Source   Sutherland (memory of the constants)
 */
export const airViscosity = (temperature: number): number =>
  (1.716e-5 * (temperature / 273.15) ** 1.5 * (273.15 + 110.4)) / (temperature + 110.4);

/** What a flow of air in a pipe is before its loss is known. */
export interface AirRun {
  /** G = m/A, kg/(s m2). */
  readonly massVelocity: number;
  readonly reynolds: number;
  readonly frictionFactor: number;
  /** f L/D. */
  readonly resistance: number;
}

export const airRun = (
  massFlow: number,
  bore: number,
  length: number,
  roughness: number,
  temperature: number,
): AirRun => {
  const massVelocity = massFlow / roundArea(bore);
  const reynolds = (massVelocity * bore) / airViscosity(temperature);
  // at rest the factor has no value and nothing is lost
  const factor = reynolds > 0 ? frictionFactor(reynolds, roughness / bore) : 0;
  return { massVelocity, reynolds, frictionFactor: factor, resistance: (factor * length) / bore };
};

/**
 * Pressure lost along a pipe of constant bore by air at one temperature.
 *
 * Method   p_1^2 - p_2^2 = G^2 R T (f L/D + 2 ln(p_1/p_2)), solved for p_2 between choking, G sqrt(R T), and p_1
 * Symbols  p_1  upstream     scalar  Pa absolute
 *          G, f L/D  run     by `airRun`
 *          T    temperature  scalar  K
 * Returns  pressure difference, Pa; NaN where the pipe chokes first
 * Assumes  ideal gas, isothermal, level pipe
 * Cost     O(1), about ten logarithms
 * Source   momentum of isothermal flow in a pipe
 */
export const airPipeLoss = (upstream: number, run: AirRun, temperature: number): number => {
  const scale = run.massVelocity * run.massVelocity * gasConstant * temperature;
  const choking = Math.sqrt(scale);
  if (run.resistance === 0 || scale === 0) return choking < upstream ? 0 : Number.NaN;
  if (choking >= upstream) return Number.NaN;
  // in the loss itself, so that a small one keeps its digits
  const excess = (loss: number): number =>
    loss * (2 * upstream - loss) - scale * (run.resistance - 2 * Math.log1p(-loss / upstream));
  const most = upstream - choking;
  return excess(most) < 0 ? Number.NaN : brentRoot(excess, 0, most);
};

/** The two empirical forms that a pneumatics person expects to see; they differ by 11 %. */
export const empiricalLoss = (normalFlow: number, bore: number, length: number, upstream: number): number => {
  const kilogramForce = 98_066.5;
  const d = 1000 * bore;
  return (
    (7.57e4 * (60 * normalFlow) ** 1.85 * length * kilogramForce) / (d ** 5 * (upstream / kilogramForce))
  );
};

export const empiricalLossHigh = (
  normalFlow: number,
  bore: number,
  length: number,
  upstream: number,
): number => {
  const d = 1000 * bore;
  return (450 * (1000 * normalFlow) ** 1.85 * length * 1e5) / (d ** 5 * (upstream / 1e5));
};

interface LineLossInputs {
  readonly flow: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly temperature: number;
  readonly bore: number;
  readonly length: number;
  readonly fittings: number;
  readonly roughness: number;
}

const runOf = (i: LineLossInputs): AirRun =>
  airRun(normalDensity * i.flow, i.bore, i.length + i.fittings, i.roughness, i.temperature);

const choke = (i: LineLossInputs): Problem[] =>
  Number.isNaN(airPipeLoss(i.pressure + i.atmosphere, runOf(i), i.temperature))
    ? [{ code: 'AIR_PIPE_CHOKES', path: 'flow', given: i.flow }]
    : [];

export const lineLossSheet = defineSheet({
  id: 'air/line-loss',
  version: 1,
  inputs: {
    flow: numberField('normalAirFlow', 'q_n', normalFlows),
    pressure: numberField('gaugePressure', 'p_1', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
    bore: numberField('length', 'D', bores),
    length: numberField('length', 'L', lengths),
    fittings: numberField('length', 'L_e', { ...lengths, assumed: 0 }),
    roughness: numberField('length', '\\varepsilon', { least: 0, most: 0.05 }),
  },
  outputs: {
    loss: numberField('pressureDifference', '\\Delta p'),
    outletPressure: numberField('gaugePressure', 'p_2'),
    reynolds: numberField('ratio', '\\mathrm{Re}'),
    frictionFactor: numberField('ratio', 'f'),
    outletVelocity: numberField('velocity', 'v_2'),
    empiricalLoss: numberField('pressureDifference', '\\Delta p_{e,1}'),
    empiricalLossHigh: numberField('pressureDifference', '\\Delta p_{e,2}'),
  },
  formula: [
    'p_1^2 - p_2^2 = G^2 R T \\left( f \\frac{L + L_e}{D} + 2 \\ln \\frac{p_1}{p_2} \\right), \\quad G = \\frac{4 \\rho_n q_n}{\\pi D^2}',
    '\\mathrm{Re} = \\frac{G D}{\\mu}, \\quad v_2 = \\frac{G R T}{p_2}',
    '\\Delta p_{e,1} = 7.57 \\times 10^4 \\frac{q^{1.85} L}{d^5 p} \\ (\\mathrm{kgf/cm^2}, \\mathrm{m^3/min}), \\quad \\Delta p_{e,2} = 450 \\frac{q^{1.85} L}{d^5 p} \\ (\\mathrm{bar}, \\mathrm{L/s})',
  ],
  limits: [
    {
      code: 'FRICTION_AIR_TRANSITION',
      broken: (_, { reynolds }) => reynolds > laminarBelow && reynolds < turbulentAbove,
    },
    { code: 'AIR_VELOCITY_HIGH', broken: (_, { outletVelocity }) => outletVelocity > 15 },
    { code: 'AIR_LOSS_TENTH', broken: ({ pressure }, { loss }) => loss > 0.1 * pressure },
    {
      code: 'AIR_OUTLET_BELOW_ATMOSPHERE',
      broken: (_, { outletPressure }) => outletPressure < 0,
    },
    { code: 'AIR_EMPIRICAL_DISAGREE', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [
    {
      title: 'isothermal flow in a pipe with the factor of Colebrook-White',
      place: 'derived from momentum and the ideal gas law',
      mark: 'computed',
    },
    {
      title: 'engineering web handbook, pressure drop in compressed air pipes',
      place: 'empirical form with 7.57e4',
      mark: 'read',
    },
    { title: 'empirical form with 450', place: 'compressed air practice', mark: 'memory' },
  ],
  check: (i) => {
    const rough = roughnessProblems([i.roughness], [i.bore]);
    return rough.length > 0 ? rough : choke(i);
  },
  compute: (i: LineLossInputs) => {
    const upstream = i.pressure + i.atmosphere;
    const run = runOf(i);
    const loss = airPipeLoss(upstream, run, i.temperature);
    const length = i.length + i.fittings;
    return {
      loss,
      outletPressure: i.pressure - loss,
      reynolds: run.reynolds,
      frictionFactor: run.frictionFactor,
      outletVelocity: (run.massVelocity * gasConstant * i.temperature) / (upstream - loss),
      empiricalLoss: empiricalLoss(i.flow, i.bore, length, upstream),
      empiricalLossHigh: empiricalLossHigh(i.flow, i.bore, length, upstream),
    };
  },
});
