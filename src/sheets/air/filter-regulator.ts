import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type FilterInputs, filterFields, filterLossNow } from './filter-loss.ts';
import {
  type Regulating,
  type RegulatorInputs,
  regulatorFields,
  regulatorOutlet,
} from './regulator-outlet.ts';

interface FilterRegulatorInputs extends FilterInputs, RegulatorInputs {}

const figures = (i: FilterRegulatorInputs) => {
  const lost = filterLossNow(i);
  const filtered = i.pressure - lost;
  return {
    lost,
    filtered,
    ...regulatorOutlet(filtered, i.setPressure, i.droop, i.droopFlow, i.flow, i.leastDifference),
  };
};

export const filterRegulatorSheet = defineSheet({
  id: 'air/filter-regulator',
  version: 1,
  inputs: { ...filterFields, ...regulatorFields },
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
    { code: 'REGULATOR_DROOP', broken: () => true },
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
    const { lost, filtered, outletPressure, regulating } = figures(i);
    return { filterLossNow: lost, filteredPressure: filtered, outletPressure, regulating };
  },
});
