import type { SheetCase } from '../sheet-case.ts';
import { allowanceScript } from './allowance-sources.ts';

export const measuredAllowanceCases: readonly SheetCase[] = [
  {
    name: '3 % and 1 % either way with 95 %: 0.5102 %, by the quantile of scipy',
    source: allowanceScript,
    inputs: { shift: 0.03, halfWidth: 0.01 },
    outputs: { deviation: 0.005102134569247, lower: 0.02, upper: 0.04 },
    tolerance: { relative: 1e-9, reason: 'printed digits' },
  },
  {
    name: 'without a spread it is exactly known',
    source: allowanceScript,
    inputs: { shift: -0.012, halfWidth: 0 },
    outputs: { deviation: 0, lower: -0.012, upper: -0.012 },
    tolerance: { absolute: 1e-15, reason: 'nothing to round' },
    notes: ['MEASURED_SURE'],
  },
];
