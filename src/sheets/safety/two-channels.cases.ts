import type { SheetCase } from '../sheet-case.ts';
import { year } from './bounds.ts';
import { iso13849Examples, referenceCases } from './sources.ts';

const computed = { relative: 5e-4, reason: 'four digits' } as const;

export const twoChannelsCases: readonly SheetCase[] = [
  {
    name: 'channels of 3 and 100 years: 66.72',
    source: { ...referenceCases, place: 'independent script; ISO 13849-1:2006 annex D prints 66, cut off' },
    inputs: { first: 3 * year, second: 100 * year },
    outputs: { lifetime: 66.72 * year },
    tolerance: computed,
    notes: ['CAUTION_GUARDING'],
  },
  {
    name: 'channels of 30 years and of three parts of 20 years: 20.81',
    source: { ...referenceCases, place: 'independent script; ISO 13849-1:2006 annex I prints 20, cut off' },
    inputs: { first: 30 * year, second: (20 / 3) * year },
    outputs: { lifetime: 20.81 * year },
    tolerance: computed,
  },
  {
    name: 'printed to whole years, cut off: 66',
    source: { ...iso13849Examples, place: 'annex D, channels of 3 and 100 years; public transcription' },
    inputs: { first: 3 * year, second: 100 * year },
    outputs: { lifetime: 66.5 * year },
    tolerance: { absolute: 0.5 * year, reason: 'it cuts off, so 66 is anything up to 67' },
  },
];
