import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

export const cutInPressureCases: readonly SheetCase[] = [
  {
    name: '7.2 bar(g) less a band of 1 bar is 6.2 bar(g)',
    source: script,
    inputs: { cutOut: 7.2e5, band: 1e5 },
    outputs: { cutIn: 6.2e5 },
    tolerance: { relative: 1e-12, reason: 'exact but for rounding' },
  },
  {
    name: '100 psig less 12 psi is 88 psig',
    source: script,
    inputs: { cutOut: 689475.7293, band: 82737.08752 },
    outputs: { cutIn: 606738.6418 },
    tolerance: { relative: 1e-9, reason: 'ten digits' },
  },
];
