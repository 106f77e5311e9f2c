import type { SheetCase } from '../sheet-case.ts';

export const hydrantPitotCases: readonly SheetCase[] = [
  {
    name: 'NFPA 291: 29.84 c d^2 sqrt(p), 2.5 in smooth outlet at 20 psi',
    source: {
      title: 'NFPA 291 pitot formula',
      place: 'read second-hand on public calculation pages',
      mark: 'read',
    },
    inputs: { pitotPressure: 137895.14, bore: 0.0635, coefficient: 0.9 },
    outputs: { flow: 0.0473585 },
    tolerance: { relative: 1e-3, reason: 'its constant has four digits, and 29.83 in some texts' },
  },
];
