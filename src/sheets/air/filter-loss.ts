import { numberField } from '../fields.ts';
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

/** What a sheet asks about a filter: its loss as stated, and what it is used at. */
export interface FilterInputs {
  readonly flow: number;
  readonly pressure: number;
  readonly atmosphere: number;
  readonly filterLoss: number;
  readonly filterFlow: number;
  readonly filterPressure: number;
}

export const filterFields = {
  flow: numberField('normalAirFlow', 'q', normalFlows),
  pressure: numberField('gaugePressure', 'p_1', supplyPressures),
  atmosphere: numberField('absolutePressure', 'p_a', standardAtmospheres),
  filterLoss: numberField('pressureDifference', '\\Delta p_f', { least: 0, most: 1e6 }),
  filterFlow: numberField('normalAirFlow', 'q_f', { least: 1e-6, most: 100 }),
  filterPressure: numberField('gaugePressure', 'p_f', supplyPressures),
};

/** Loss with the gauge pressures of the fields. */
export const filterLossNow = (i: FilterInputs): number =>
  filterLoss(i.filterLoss, i.filterFlow, i.filterPressure + i.atmosphere, i.flow, i.pressure + i.atmosphere);

export const filterLossSheet = defineSheet({
  id: 'air/filter-loss',
  version: 1,
  inputs: filterFields,
  outputs: {
    loss: numberField('pressureDifference', '\\Delta p'),
    outletPressure: numberField('gaugePressure', 'p_2'),
  },
  formula: [
    '\\Delta p = \\Delta p_f \\left( \\frac{q}{q_f} \\right)^2 \\frac{p_f + p_a}{p_1 + p_a}, \\quad p_2 = p_1 - \\Delta p',
  ],
  limits: [
    { code: 'FILTER_DIRTY', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [{ title: 'turbulent loss', place: 'follows from dp ~ rho v^2', mark: 'memory' }],
  check: (i) =>
    i.pressure - filterLossNow(i) > 0
      ? []
      : [{ code: 'FILTER_TAKES_ALL', path: 'pressure', given: i.pressure }],
  compute: (i: FilterInputs) => {
    const loss = filterLossNow(i);
    return { loss, outletPressure: i.pressure - loss };
  },
});
