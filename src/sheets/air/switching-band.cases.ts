import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const switchingBandCases: readonly SheetCase[] = [
  {
    name: 'from 6.2 to 7.2 bar(g): 1 bar',
    source: script,
    inputs: { cutOut: 7.2e5, cutIn: 6.2e5 },
    outputs: { band: 1e5 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: 'from 88 to 100 psig: 12 psi',
    source: script,
    inputs: { cutOut: 689475.7293, cutIn: 606738.6418 },
    outputs: { band: 82737.08752 },
    tolerance: { relative: 1e-8, reason: 'ten digits' },
  },
];
