import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, fluidsLibrary, kvStandardRead } from './sources.ts';

export const valveCoefficientCases: readonly SheetCase[] = [
  {
    name: 'fluids, Cv 2.312 is Kv 1.99983',
    source: fluidsLibrary,
    inputs: { coefficient: 2.312, basis: 'cv-us', bore: 0.015 },
    outputs: { kv: 1.99983, cvUS: 2.312 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
  {
    name: 'fluids, Kv 2.312 in a bore of 15 mm is K 15.1534',
    source: fluidsLibrary,
    inputs: { coefficient: 2.312, basis: 'kv', bore: 0.015 },
    outputs: { k: 15.1534 },
    tolerance: {
      relative: 1e-3,
      reason: 'the library rounds the constant to 1.6e9; exact units give 1.5989e9',
    },
  },
  {
    name: 'Kv from K 15.1534: back to 2.312',
    source: fluidsLibrary,
    inputs: { coefficient: 15.1534, basis: 'k', bore: 0.015 },
    outputs: { kv: 2.312 },
    tolerance: { relative: 5e-4, reason: 'half of what the rounded constant moves K' },
  },
  {
    name: 'Cv 10 (US) is Kv 8.6498',
    source: kvStandardRead,
    inputs: { coefficient: 10, basis: 'cv-us', bore: 0.02 },
    outputs: { kv: 8.6498 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
  {
    name: 'Kv of an imperial Cv from exact units: 1.03879',
    source: arithmetic,
    inputs: { coefficient: 1.03879, basis: 'kv', bore: 0.02 },
    outputs: { cvImperial: 1 },
    tolerance: { relative: 1e-5, reason: 'printed digits' },
  },
];
