import type { SheetCase } from '../sheet-case.ts';
import { script } from './sources.ts';

const cfm = 0.0004719474432;
const inputs = { loaded: 480, unloaded: 2880, delivery: 900 * cfm };

export const leakLoadUnloadCases: readonly SheetCase[] = [
  {
    name: '8 minutes loaded, 48 unloaded, 900 cfm: 14.29 % and 128.6 cfm',
    source: script,
    inputs,
    outputs: { share: 0.1429, leak: 128.6 * cfm },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
    notes: ['LEAK_NEGLECTED'],
  },
  {
    name: 'the training sheet prints 0.142 and 127.8 cfm for them',
    source: {
      title: 'Some calculation examples for your training, compressor dealer',
      edition: 'July 2013',
      place: 'leak test by loaded time',
      mark: 'read',
    },
    inputs,
    outputs: { share: 0.142, leak: 127.8 * cfm },
    tolerance: { relative: 7e-3, reason: 'it cuts 0.142857 to 0.142' },
  },
];
