import type { SheetCase } from '../sheet-case.ts';
import { euDirective, ukRegulations } from './rule-sources.ts';

const exact = { relative: 1e-12, reason: 'exact but for rounding of doubles' } as const;

export const averageScaleCases: readonly SheetCase[] = [
  {
    name: 'Directive 76/211/EEC: T of 15 mL allows an error of 3 mL',
    source: { ...euDirective, place: 'Annex II 1.3' },
    inputs: { deficiency: 15e-6, expanded: 3e-6 },
    outputs: { fitness: 'fits', largestError: 3e-6 },
    tolerance: exact,
  },
  {
    name: 'SI 2006/659: 3.1 mL are too much for T of 15 mL',
    source: { ...ukRegulations, place: 'schedule 2, 1.3; read in those of Northern Ireland, SR 2011/331' },
    inputs: { deficiency: 15e-6, expanded: 3.1e-6 },
    outputs: { fitness: 'does not fit' },
    tolerance: exact,
  },
];
