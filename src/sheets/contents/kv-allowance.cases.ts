import type { SheetCase } from '../sheet-case.ts';
import { allowanceScript } from './allowance-sources.ts';

export const kvAllowanceCases: readonly SheetCase[] = [
  { viscosityRatio: 10, shift: -0.05, deviation: 0.025 },
  { viscosityRatio: 2, shift: -0.01505149978319906, deviation: 0.00752574989159953 },
  { viscosityRatio: 1.8, shift: -0.012763625255165304, deviation: 0.006381812627582652 },
  { viscosityRatio: 0.5, shift: 0, deviation: 0.00752574989159953 },
].map(
  ({ viscosityRatio, ...outputs }): SheetCase => ({
    name: `a straight line over the decade, ${viscosityRatio} times`,
    source: allowanceScript,
    inputs: { viscosityRatio },
    outputs,
    tolerance: { relative: 1e-12, absolute: 1e-15, reason: 'double precision' },
  }),
);
