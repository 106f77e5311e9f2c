import type { SheetCase } from '../sheet-case.ts';

const article = (place: string) =>
  ({ title: 'public page on voltage unbalance', place, mark: 'read' }) as const;
const half = { absolute: 5e-5, reason: 'half of a hundredth of a per cent' } as const;

export const voltageUnbalanceCases: readonly SheetCase[] = [
  {
    name: '460, 467 and 450 V: 1.961 %',
    source: article('worked example of a 10 hp motor'),
    inputs: { first: 460, second: 467, third: 450 },
    outputs: { nema: 0.01961 },
    tolerance: half,
    notes: ['CAUTION_ELECTRICAL', 'UNBALANCE_WAYS_DIFFER', 'UNBALANCE_OVER_1'],
  },
  {
    name: 'the same: mean 459 V',
    source: article('worked example of a 10 hp motor'),
    inputs: { first: 460, second: 467, third: 450 },
    outputs: { mean: 459 },
    tolerance: { relative: 1e-12, reason: 'exact mean' },
  },
  {
    name: 'the same by sequences: 2.146 %',
    source: { title: 'symmetrical components', place: 'independent script', mark: 'computed' },
    inputs: { first: 460, second: 467, third: 450 },
    outputs: { sequence: 0.02146 },
    tolerance: half,
    notes: ['UNBALANCE_OVER_IEC'],
  },
  {
    name: '462, 463 and 455 V: 1.087 %, printed 1.1',
    source: article('motor measurements, US DOE example'),
    inputs: { first: 462, second: 463, third: 455 },
    outputs: { nema: 0.01087 },
    tolerance: half,
  },
  {
    name: '480, 476 and 472 V: 0.840 %, where (max - min)/mean would be 1.68 %',
    source: article('limits, causes and derating by NEMA MG 1'),
    inputs: { first: 480, second: 476, third: 472 },
    outputs: { nema: 0.0084 },
    tolerance: half,
  },
  {
    name: '208, 206 and 199 V: 2.61 %, which a public page prints as about 2.3 %',
    source: { title: 'definition of NEMA MG 1', place: 'hand calculation', mark: 'computed' },
    inputs: { first: 208, second: 206, third: 199 },
    outputs: { nema: 0.0261 },
    tolerance: half,
  },
  {
    name: 'current unbalance is 6 to 10 times as much, extra heating 2 x per cent squared: 2 % gives 12 to 20 % and 8 %',
    source: article('rules on current unbalance and heating'),
    inputs: { first: 408, second: 400, third: 392 },
    outputs: { nema: 0.02, lowestCurrent: 0.12, highestCurrent: 0.2, heating: 0.08 },
    tolerance: { relative: 1e-9, reason: 'exact products' },
  },
];
