import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { normalFlows, standardAtmospheres, supplyPressures } from './bounds.ts';

/**
 * Loss of a filter at another flow and pressure.
 *
 * Method   dp_2 = dp_1 (q_2/q_1)^2 p_1/p_2
 * Symbols  dp_1  loss        scalar  Pa           at q_1 and p_1
 *          q     flows       scalar  m3/s         normal air
 *          p     pressures   scalar  Pa absolute  before the filter
 * Returns  pressure difference, Pa
 * Assumes  turbulent: the loss goes with density and the square of the velocity
 * Cost     O(1)
 * Source   memory; follows from dp ~ rho v^2
 */
export const filterLoss = (
  loss: number,
  flow: number,
  pressure: number,
  otherFlow: number,
  otherPressure: number,
): number => (loss * (otherFlow / flow) ** 2 * pressure) / otherPressure;

export type Regulating = 'regulates' | 'wide open';

interface FilterRegulatorInputs {
  readonly flow: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly filterLoss: number;
  readonly filterFlow: number;
  readonly filterPressure: number;
  readonly setPressure: number;
  readonly droop: number;
  readonly droopFlow: number;
  readonly leastDifference: number;
}

const figures = (i: FilterRegulatorInputs) => {
  const lost = filterLoss(
    i.filterLoss,
    i.filterFlow,
    i.filterPressure + i.atmosphere,
    i.flow,
    i.pressure + i.atmosphere,
  );
  const filtered = i.pressure - lost;
  const regulated = i.setPressure - (i.droop * i.flow) / i.droopFlow;
  const open = filtered - i.leastDifference;
  return { lost, filtered, regulated, open };
};

export const filterRegulatorSheet = defineSheet({
  id: 'air/filter-regulator',
  version: 1,
  inputs: {
    flow: numberField('normalAirFlow', 'q', normalFlows),
    pressure: numberField('gaugePressure', 'p_1', supplyPressures),
    atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
    filterLoss: numberField('pressureDifference', '\\Delta p_f', { least: 0, most: 1e6 }),
    filterFlow: numberField('normalAirFlow', 'q_f', { least: 1e-6, most: 100 }),
    filterPressure: numberField('gaugePressure', 'p_f', supplyPressures),
    setPressure: numberField('gaugePressure', 'p_s', supplyPressures),
    droop: numberField('pressureDifference', '\\Delta p_d', { least: 0, most: 1e6 }),
    droopFlow: numberField('normalAirFlow', 'q_d', { least: 1e-6, most: 100 }),
    leastDifference: numberField('pressureDifference', '\\Delta p_{\\min}', {
      least: 0,
      most: 1e6,
      assumed: 0,
    }),
  },
  outputs: {
    filterLossNow: numberField('pressureDifference', '\\Delta p'),
    filteredPressure: numberField('gaugePressure', 'p_2'),
    outletPressure: numberField('gaugePressure', 'p_3'),
    regulating: choiceField<Regulating>('\\text{regulator}', ['regulates', 'wide open']),
  },
  formula: [
    '\\Delta p = \\Delta p_f \\left( \\frac{q}{q_f} \\right)^2 \\frac{p_f + p_a}{p_1 + p_a}, \\quad p_2 = p_1 - \\Delta p',
    'p_3 = \\min \\left( p_s - \\Delta p_d \\frac{q}{q_d},\\ p_2 - \\Delta p_{\\min} \\right)',
  ],
  limits: [
    { code: 'REGULATOR_WIDE_OPEN', broken: (_, { regulating }) => regulating === 'wide open' },
    { code: 'FILTER_DIRTY', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [{ title: 'turbulent loss and linear droop', place: 'follows from dp ~ rho v^2', mark: 'memory' }],
  check: (i) => {
    const { open, regulated } = figures(i);
    return [
      ...(open > 0 ? [] : [{ code: 'FILTER_TAKES_ALL', path: 'pressure', given: i.pressure }]),
      ...(regulated > 0
        ? []
        : [{ code: 'REGULATOR_DROOPS_AWAY', path: 'setPressure', given: i.setPressure }]),
    ];
  },
  compute: (i: FilterRegulatorInputs) => {
    const { lost, filtered, regulated, open } = figures(i);
    return {
      filterLossNow: lost,
      filteredPressure: filtered,
      outletPressure: Math.min(regulated, open),
      regulating: (regulated <= open ? 'regulates' : 'wide open') as Regulating,
    };
  },
});
