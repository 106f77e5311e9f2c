import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const tankLevelCases: readonly SheetCase[] = [
  {
    name: 'by hand: 300 L out of 1.2 m2 lower the surface by 250 mm',
    source: arithmetic,
    inputs: { surface: 2.55, drawn: 0.3, area: 1.2, outlet: 1.6 },
    outputs: { level: 2.3 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
];
