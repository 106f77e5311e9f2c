import type { SheetCase } from '../sheet-case.ts';

const table = {
  title: 'table of wire gauges by an independent script from the definition of ASTM B258',
  place: 'rows 14, 4/0 and 250',
  mark: 'computed',
} as const;
const necTable8 = {
  title: 'NEC chapter 9, table 8',
  edition: '2008',
  place: 'circular mils of 10 AWG (10 380) and 4/0 (211 600)',
  mark: 'memory',
} as const;
const printed = { relative: 2e-3, reason: 'printed to three digits' } as const;

export const wireGaugeCases: readonly SheetCase[] = [
  {
    name: '14 AWG: 2.08 mm2, next section 2.5 mm2',
    source: table,
    inputs: { size: '14 AWG' },
    outputs: { area: 2.08e-6, metric: '2.5 mm2' },
    tolerance: printed,
    notes: ['METRIC_NOT_EQUIVALENT'],
  },
  {
    name: '8 AWG: 8.37 mm2, next section 10 mm2',
    source: table,
    inputs: { size: '8 AWG' },
    outputs: { area: 8.37e-6, metric: '10 mm2' },
    tolerance: printed,
  },
  {
    name: '1 AWG: 42.4 mm2, next section 50 mm2',
    source: table,
    inputs: { size: '1 AWG' },
    outputs: { area: 42.4e-6, metric: '50 mm2' },
    tolerance: printed,
  },
  {
    name: '250 kcmil: 126.7 mm2',
    source: table,
    inputs: { size: '250 kcmil' },
    outputs: { area: 126.7e-6 },
    tolerance: printed,
  },
  {
    name: '4/0 AWG: 0.46 in across, the upper point of definition of the gauge',
    source: { title: 'ASTM B258', place: 'diameter of 4/0 by definition', mark: 'computed' },
    inputs: { size: '4/0 AWG' },
    outputs: { diameter: 0.46 * 0.0254 },
    tolerance: { relative: 1e-9, reason: 'rounding of doubles' },
  },
  {
    name: '10 AWG: 10 380 circular mils',
    source: necTable8,
    inputs: { size: '10 AWG' },
    outputs: { area: 10380 * 5.06707e-10 },
    tolerance: printed,
  },
];
