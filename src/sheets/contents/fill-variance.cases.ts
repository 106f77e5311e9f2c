import type { SheetCase } from '../sheet-case.ts';
import { statisticsScript } from './fill-sources.ts';

export const fillVarianceCases: readonly SheetCase[] = [
  {
    name: 'repeat 1.4, drift 0.5, count 0.495, after-run 6.2 mL at 3 % of flow: 1.505 mL',
    source: statisticsScript,
    inputs: {
      repeat: 1.4e-6,
      drift: 0.5e-6,
      perCount: 0.495e-6,
      afterRun: 6.2e-6,
      flowVariation: 0.03,
    },
    outputs: {
      countPart: 0.142894191624e-6,
      flowPart: 0.186e-6,
      spread: 1.50499659468e-6,
      spreadOfAll: 1.50499659468e-6,
    },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
  {
    name: 'three and four make five, and ten between lanes 11.18',
    source: { title: 'right-angled triangle', place: 'by hand', mark: 'computed' },
    inputs: { repeat: 3e-3, drift: 4e-3, perCount: 1e-12, afterRun: 0, flowVariation: 0, lanes: 0.01 },
    outputs: { spread: 5e-3, spreadOfAll: 0.011180339887 },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
];
