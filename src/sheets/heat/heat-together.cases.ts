import type { SheetCase } from '../sheet-case.ts';
import { arithmetic } from './sources.ts';

export const heatTogetherCases: readonly SheetCase[] = [
  {
    name: '18 kW and 6 kW are 24 kW, 81 891 Btu/h; 2 kW that a third would give count for nothing',
    source: arithmetic,
    inputs: { heats: [18_000, 6000, -2000] },
    // 1 Btu/h = 0.293071070 W
    outputs: { heat: 81_891.4 * 0.29307107 },
    tolerance: { relative: 1e-6, reason: 'six digits' },
  },
];
