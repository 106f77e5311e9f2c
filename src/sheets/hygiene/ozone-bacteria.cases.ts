import type { SheetCase } from '../sheet-case.ts';
import { ozoneArticle, script } from './sources.ts';

export const ozoneBacteriaCases: readonly SheetCase[] = [
  {
    name: 'CT 0.832 mg min/L gives 5 logs',
    source: ozoneArticle,
    inputs: { residual: 0.208e-3, time: 240 },
    outputs: { reached: 5 },
    tolerance: { relative: 2e-3, reason: 'coefficients of three digits' },
    notes: ['OZONE_LINE_NO_ORIGIN'],
  },
  {
    name: '0.208 mg/L for 4 min is 0.832 mg min/L',
    source: script,
    inputs: { residual: 0.208e-3, time: 240 },
    outputs: { ct: 0.832 * 0.06 },
    tolerance: { relative: 1e-9, reason: 'one product' },
  },
];
