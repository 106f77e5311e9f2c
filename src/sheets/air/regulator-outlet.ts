import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { normalFlows, supplyPressures } from './bounds.ts';

export type Regulating = 'regulates' | 'wide open';

/**
 * Pressure behind a regulator: what its setting leaves at a flow, or what its supply leaves where that is lower.
 *
 * Method   p = min(p_s - dp_d q/q_d, p_1 - dp_min)
 * Symbols  p_1     pressure         scalar  Pa gauge  before the regulator
 *          p_s     setPressure      scalar  Pa gauge  at no flow
 *          dp_d    droop            scalar  Pa        at q_d
 *          q_d     droopFlow        scalar  m3/s      normal air, > 0
 *          q       flow             scalar  m3/s      normal air
 *          dp_min  leastDifference  scalar  Pa        over a regulator that stands wide open
 * Returns  both terms and the lower of them, Pa gauge, and which it is
 * Assumes  the droop grows with the flow
 * Cost     O(1)
 * Source   memory
 */
export const regulatorOutlet = (
  pressure: number,
  setPressure: number,
  droop: number,
  droopFlow: number,
  flow: number,
  leastDifference: number,
): {
  readonly regulated: number;
  readonly open: number;
  readonly outletPressure: number;
  readonly regulating: Regulating;
} => {
  const regulated = setPressure - (droop * flow) / droopFlow;
  const open = pressure - leastDifference;
  return {
    regulated,
    open,
    outletPressure: Math.min(regulated, open),
    regulating: regulated <= open ? 'regulates' : 'wide open',
  };
};

/** What a sheet asks about a regulator. */
export interface RegulatorInputs {
  readonly setPressure: number;
  readonly droop: number;
  readonly droopFlow: number;
  readonly leastDifference: number;
}

export const regulatorFields = {
  setPressure: numberField('gaugePressure', 'p_s', supplyPressures),
  droop: numberField('pressureDifference', '\\Delta p_d', { least: 0, most: 1e6 }),
  droopFlow: numberField('normalAirFlow', 'q_d', { least: 1e-6, most: 100 }),
  leastDifference: numberField('pressureDifference', '\\Delta p_{\\min}', {
    least: 0,
    most: 1e6,
    assumed: 0,
  }),
};

/** Middle of the 0.2 to 0.6 bar that are usual at the rated flow, Pa; memory. */
const usualDroop = 40_000;

interface RegulatorOutletInputs extends RegulatorInputs {
  readonly flow: number;
  readonly pressure: number;
}

const figures = (i: RegulatorOutletInputs) =>
  regulatorOutlet(i.pressure, i.setPressure, i.droop, i.droopFlow, i.flow, i.leastDifference);

export const regulatorOutletSheet = defineSheet({
  id: 'air/regulator-outlet',
  version: 1,
  inputs: {
    flow: numberField('normalAirFlow', 'q', normalFlows),
    pressure: numberField('gaugePressure', 'p_1', supplyPressures),
    ...regulatorFields,
    droop: { ...regulatorFields.droop, assumed: usualDroop },
  },
  outputs: {
    outletPressure: numberField('gaugePressure', 'p_2'),
    regulating: choiceField<Regulating>('\\text{regulator}', ['regulates', 'wide open']),
  },
  formula: ['p_2 = \\min \\left( p_s - \\Delta p_d \\frac{q}{q_d},\\ p_1 - \\Delta p_{\\min} \\right)'],
  limits: [
    { code: 'REGULATOR_WIDE_OPEN', broken: (_, { regulating }) => regulating === 'wide open' },
    { code: 'REGULATOR_DROOP', broken: () => true },
    { code: 'AIR_REFERENCE', broken: () => true },
    { code: 'CAUTION_COMPRESSED_AIR', broken: () => true },
  ],
  sources: [{ title: 'linear droop', place: 'compressed air practice', mark: 'memory' }],
  check: (i) => {
    const { regulated, open } = figures(i);
    return [
      ...(open > 0 ? [] : [{ code: 'REGULATOR_NO_SUPPLY', path: 'pressure', given: i.pressure }]),
      ...(regulated > 0
        ? []
        : [{ code: 'REGULATOR_DROOPS_AWAY', path: 'setPressure', given: i.setPressure }]),
    ];
  },
  compute: (i: RegulatorOutletInputs) => {
    const { outletPressure, regulating } = figures(i);
    return { outletPressure, regulating };
  },
});
