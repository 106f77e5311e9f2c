import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const cfm = 0.0004719474432;
const encyclopedia = {
  title: 'encyclopedia article on the normal cubic metre and scfm',
  place: '1000 kg/h of air, two standard temperatures',
  mark: 'read',
} as const;

export const massToFreeAirCases: readonly SheetCase[] = [
  {
    name: '1000 kg/h are 455 scfm where standard is 32 degF',
    source: encyclopedia,
    inputs: { massFlow: 1000 / 3600, to: 'DIN 1343' },
    outputs: { flow: 455 * cfm },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  },
  {
    name: '1000 kg/h are 481 scfm where standard is 60 degF',
    source: encyclopedia,
    inputs: { massFlow: 1000 / 3600, to: '60 degF' },
    outputs: { flow: 481 * cfm },
    tolerance: { relative: 3e-3, reason: 'three printed digits' },
  },
  {
    name: '1000 kg/h are 495.4 scfm at the compressor makers’ state',
    source: script,
    inputs: { massFlow: 1000 / 3600, to: 'CAGI' },
    outputs: { flow: 495.4 * cfm },
    tolerance: { relative: 2e-4, reason: 'four printed digits' },
  },
];
