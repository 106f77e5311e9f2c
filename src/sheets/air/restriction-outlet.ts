import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import {
  conductances,
  criticalRatios,
  normalFlows,
  roomTemperatures,
  standardAtmospheres,
  supplyPressures,
} from './bounds.ts';
import { normalTemperature } from './dry-air.ts';
import { iso6358, iso6358Series } from './sources.ts';

/**
 * Pressure that a component takes from a flow: the flow equation of ISO 6358 turned round.
 *
 * Method   p_1 - p_2 = p_1 (1 - b) (1 - sqrt(1 - s^2)),  s = q/(C p_1);  written as s^2/(1 + sqrt(1 - s^2)) so that
 *          a small loss keeps its digits
 * Symbols  C    conductance    scalar  m3/(s Pa)    at the temperature of the air: C sqrt(T_0/T)
 *          b    criticalRatio  scalar  1
 *          p_1  upstream       scalar  Pa absolute
 *          q    flow           scalar  m3/s         normal air
 * Returns  pressure difference, Pa; NaN where the component chokes under this flow
 * Cost     O(1)
 * Source   ISO 6358; ISO 6358-3 names the technique (abstract read)
 */
export const restrictionLoss = (
  conductance: number,
  criticalRatio: number,
  upstream: number,
  flow: number,
): number => {
  const share = flow / (conductance * upstream);
  if (!(share <= 1)) return Number.NaN;
  return (upstream * (1 - criticalRatio) * share * share) / (1 + Math.sqrt((1 - share) * (1 + share)));
};

interface RestrictionOutletInputs {
  readonly flow: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly temperature: number;
  readonly conductance: number;
  readonly criticalRatio: number;
}

const lossOf = (i: RestrictionOutletInputs): number =>
  restrictionLoss(
    i.conductance * Math.sqrt(normalTemperature / i.temperature),
    i.criticalRatio,
    i.pressure + i.atmosphere,
    i.flow,
  );

export const restrictionOutletSheet = defineSheet({
  id: 'air/restriction-outlet',
  version: 1,
  inputs: {
    flow: numberField('normalAirFlow', 'q', normalFlows),
    pressure: numberField('gaugePressure', 'p_1', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    temperature: numberField('temperature', 'T', roomTemperatures),
    conductance: numberField('sonicConductance', 'C', conductances),
    criticalRatio: numberField('ratio', 'b', criticalRatios),
  },
  outputs: {
    outletPressure: numberField('gaugePressure', 'p_2'),
    loss: numberField('pressureDifference', '\\Delta p'),
  },
  formula: [
    '\\Delta p = (p_1 + p_a) (1 - b) \\left( 1 - \\sqrt{1 - s^2} \\right), \\quad s = \\frac{q}{C (p_1 + p_a)} \\sqrt{\\frac{T}{T_0}}',
    'p_2 = p_1 - \\Delta p',
  ],
  limits: [
    { code: 'AIR_OUTLET_BELOW_ATMOSPHERE', broken: (_, { outletPressure }) => outletPressure < 0 },
    { code: 'RESTRICTION_NOZZLE', broken: ({ criticalRatio }) => criticalRatio > 0.5 },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [iso6358, iso6358Series],
  check: (i) =>
    Number.isNaN(lossOf(i)) ? [{ code: 'AIR_RESTRICTION_CHOKES', path: 'flow', given: i.flow }] : [],
  compute: (i: RestrictionOutletInputs) => {
    const loss = lossOf(i);
    return { outletPressure: i.pressure - loss, loss };
  },
});
