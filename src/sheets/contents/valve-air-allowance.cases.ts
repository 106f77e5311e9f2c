import type { SheetCase } from '../sheet-case.ts';
import { allowanceScript } from './allowance-sources.ts';

export const valveAirAllowanceCases: readonly SheetCase[] = [
  { name: '6 bar for 7: a sixth more', airRatio: 6 / 7, shift: 1 / 6, deviation: 1 / 12 },
  { name: '6 bar for 5: a sixth less', airRatio: 1.2, shift: -1 / 6, deviation: 1 / 12 },
].map(
  ({ name, airRatio, shift, deviation }): SheetCase => ({
    name,
    source: allowanceScript,
    inputs: { airRatio },
    outputs: { shift, deviation },
    tolerance: { relative: 1e-12, reason: 'double precision' },
  }),
);
