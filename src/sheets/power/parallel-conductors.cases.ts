import type { SheetCase } from '../sheet-case.ts';

export const parallelConductorsCases: readonly SheetCase[] = [
  {
    name: 'two 3/0 AWG of 200 A carry 400 A together',
    source: {
      title: 'NFPA 70, National Electrical Code (NEC)',
      edition: '2008',
      place: 'table 310.16, 75 degC copper, 3/0 AWG, public transcription; doubled by hand',
      mark: 'read',
    },
    inputs: { each: 200, parallel: 2 },
    outputs: { allowed: 400 },
    tolerance: { relative: 1e-12, reason: 'whole amperes' },
    notes: ['CAUTION_ELECTRICAL', 'PARALLEL_EVEN'],
  },
];
