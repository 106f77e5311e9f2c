import type { SheetCase } from '../sheet-case.ts';
import { byHand, referenceCases } from './sources.ts';

export const bondLimitCases: readonly SheetCase[] = [
  {
    name: '10 m of 4 mm2 copper: 0.0431 ohm, and 10 milliohm for its contacts',
    source: referenceCases,
    inputs: { rule: 'iec-60204-1', length: 10, area: 4e-6 },
    outputs: { conductor: 0.0431, most: 0.0531 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
    notes: ['CAUTION_GUARDING', 'BOND_TEST_CURRENT'],
  },
  {
    name: 'a short thick bond under NFPA 79: what its copper and contacts have, far under 0.1 ohm',
    source: byHand,
    inputs: { rule: 'nfpa-79', length: 2, area: 16e-6, contacts: 0.005 },
    outputs: { conductor: 0.002155, most: 0.007155 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
  },
  {
    name: '30 m of 4 mm2 under NFPA 79: the copper alone has 0.1293 ohm, 0.1 is allowed',
    source: byHand,
    inputs: { rule: 'nfpa-79', length: 30, area: 4e-6 },
    outputs: { conductor: 0.1293, most: 0.1 },
    tolerance: { relative: 1e-9, reason: 'exact figures' },
    notes: ['BOND_LONG_FOR_US'],
  },
];
