import type { SheetCase } from '../sheet-case.ts';

const source = {
  title: 'hand calculation',
  place: '0.1 (600/400)^2 8.01325/7.01325 bar; 5.5 - 0.4 x 600/500',
  mark: 'computed',
} as const;
const inputs = {
  flow: 0.01,
  pressure: 6e5,
  filterLoss: 0.1e5,
  filterFlow: 0.4 / 60,
  filterPressure: 7e5,
  setPressure: 5.5e5,
  droop: 0.4e5,
  droopFlow: 0.5 / 60,
};

export const filterRegulatorCases: readonly SheetCase[] = [
  {
    name: '600 L/min from 6 bar(g): the filter loses 0.2571 bar, the regulator droops to 5.02 bar(g)',
    source,
    inputs,
    outputs: {
      filterLossNow: 0.25708e5,
      filteredPressure: 5.74292e5,
      outletPressure: 5.02e5,
      regulating: 'regulates',
    },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['FILTER_DIRTY', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'set to 5.5 bar and fed with 5.6 it does not regulate: 5.6 less the 0.1 bar that it needs',
    source: {
      title: 'hand calculation',
      place: 'no flow, no loss in the filter; least difference of 0.15 bar',
      mark: 'computed',
    },
    inputs: { ...inputs, flow: 0, pressure: 5.6e5, leastDifference: 0.15e5 },
    outputs: { outletPressure: 5.45e5, regulating: 'wide open' },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
    notes: ['REGULATOR_WIDE_OPEN'],
  },
];
