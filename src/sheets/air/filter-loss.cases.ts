import type { SheetCase } from '../sheet-case.ts';

const inputs = { flow: 0.01, pressure: 6e5, filterLoss: 0.1e5, filterFlow: 0.4 / 60, filterPressure: 7e5 };

export const filterLossCases: readonly SheetCase[] = [
  {
    name: '0.1 bar at 400 L/min and 7 bar(g) are 0.2571 bar at 600 L/min and 6 bar(g)',
    source: {
      title: 'hand calculation',
      place: '0.1 (600/400)^2 8.01325/7.01325 bar',
      mark: 'computed',
    },
    inputs,
    outputs: { loss: 0.25708e5, outletPressure: 5.74292e5 },
    tolerance: { relative: 1e-4, reason: 'five printed digits' },
    notes: ['FILTER_DIRTY', 'CAUTION_COMPRESSED_AIR'],
  },
  {
    name: 'where it was rated it loses what is stated',
    source: { title: 'definition', place: 'same flow, same pressure', mark: 'computed' },
    inputs: { ...inputs, flow: 0.4 / 60, pressure: 7e5 },
    outputs: { loss: 0.1e5, outletPressure: 6.9e5 },
    tolerance: { relative: 1e-12, reason: 'rounding of doubles' },
  },
];
