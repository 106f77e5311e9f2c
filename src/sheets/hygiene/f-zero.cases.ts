import type { SheetCase } from '../sheet-case.ts';
import { script, sterilisationArticle } from './sources.ts';

const digits = { relative: 3e-3, reason: 'three printed digits' } as const;

export const fZeroCases: readonly SheetCase[] = (
  [
    [15, 121.11, 15, sterilisationArticle],
    [15, 111.11, 1.5, sterilisationArticle],
    [15, 124, 29.2, script],
    [30, 115, 7.35, script],
  ] as const
).map(([minutes, celsius, given, source]) => ({
  name: `${minutes} min at ${celsius} degC are F0 ${given} min`,
  source,
  inputs: { times: [0, minutes * 60], temperatures: [celsius + 273.15, celsius + 273.15] },
  outputs: { minutes: given, time: given * 60 },
  tolerance: digits,
}));
