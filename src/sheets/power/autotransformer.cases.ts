import type { SheetCase } from '../sheet-case.ts';

export const autotransformerCases: readonly SheetCase[] = [
  {
    name: '208 to 230 V, 10 kVA: the added winding carries the load current at 22 V of 230: 0.957 kVA',
    source: {
      title: 'winding by winding power of an ideal autotransformer',
      place: 'hand calculation',
      mark: 'computed',
    },
    inputs: { load: 10e3, supplyVoltage: 208, loadVoltage: 230 },
    outputs: { rating: 956.5, supplyCurrent: 27.757, loadCurrent: 25.102 },
    tolerance: { relative: 1e-4, reason: 'four to five digits' },
    notes: ['CAUTION_ELECTRICAL', 'AUTOTRANSFORMER_NO_NEUTRAL'],
  },
];
