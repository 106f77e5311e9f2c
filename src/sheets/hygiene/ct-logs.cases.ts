import type { SheetCase } from '../sheet-case.ts';
import { cfr141, script } from './sources.ts';

const [mg, ct] = [1e-3, 0.06];

export const ctLogsCases: readonly SheetCase[] = [
  {
    name: '1.2 mg/L for 60 min against CT 92: 72 mg min/L, ratio 0.7826, 2.348 logs',
    source: cfr141,
    inputs: { residuals: [1.2 * mg], times: [3600], tableCts: [92 * ct] },
    outputs: { cts: [72 * ct], ratio: 0.7826, reached: 2.348 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
  },
  {
    name: 'two stretches add their ratios: 23/92 and 46/92 are 0.75, 2.25 logs',
    source: script,
    inputs: { residuals: [mg, mg], times: [1380, 2760], tableCts: [92 * ct, 92 * ct] },
    outputs: { ratio: 0.75, reached: 2.25 },
    tolerance: { relative: 1e-9, reason: 'exact' },
  },
];
