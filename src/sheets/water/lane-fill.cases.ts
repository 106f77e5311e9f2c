import type { SheetCase } from '../sheet-case.ts';

export const laneFillCases: readonly SheetCase[] = [
  {
    name: 'a 0.75 L bottle alone on the manifold: 1.616 s; 60 ms after-run is 27.8 mL',
    source: {
      title: 'manifold example, independent script',
      place: 'lane flow 0.4641 L/s',
      mark: 'computed',
    },
    inputs: { volume: 0.00075, flow: 0.0004641, delay: 0.03, closing: 0.06 },
    outputs: { countTime: 1.616, afterRun: 0.0000278, fillTime: 1.706, filled: 0.0007778 },
    tolerance: { relative: 2e-3, reason: 'three to four printed digits' },
  },
  {
    name: 'the same with all twelve open: 2.426 s; after-run 18.6 mL',
    source: {
      title: 'manifold example, independent script',
      place: 'lane flow 0.3092 L/s',
      mark: 'computed',
    },
    inputs: { volume: 0.00075, flow: 0.0003092, delay: 0.03, closing: 0.06 },
    outputs: { countTime: 2.426, afterRun: 0.0000186 },
    tolerance: { relative: 3e-3, reason: 'three to four printed digits' },
  },
];
