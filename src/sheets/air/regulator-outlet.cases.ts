import type { SheetCase } from '../sheet-case.ts';

const inputs = { flow: 0.01, pressure: 5.74292e5, setPressure: 5.5e5, droop: 0.4e5, droopFlow: 0.5 / 60 };

export const regulatorOutletCases: readonly SheetCase[] = [
  {
    name: 'set to 5.5 bar(g), 0.4 bar of droop at 500 L/min: 5.02 bar(g) at 600 L/min',
    source: { title: 'hand calculation', place: '5.5 - 0.4 x 600/500', mark: 'computed' },
    inputs,
    outputs: { outletPressure: 5.02e5, regulating: 'regulates' },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
    notes: ['REGULATOR_DROOP', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'set to 5.5 bar and fed with 5.6 it does not regulate: 5.6 less the 0.15 bar that it needs',
    source: { title: 'hand calculation', place: 'no flow; least difference of 0.15 bar', mark: 'computed' },
    inputs: { ...inputs, flow: 0, pressure: 5.6e5, leastDifference: 0.15e5 },
    outputs: { outletPressure: 5.45e5, regulating: 'wide open' },
    tolerance: { relative: 1e-9, reason: 'exact but for rounding' },
    notes: ['REGULATOR_WIDE_OPEN'],
  },
];
