import type { SheetCase } from '../sheet-case.ts';
import { necExampleD8, necMotorArticle, switchgearAppendix } from './sources.ts';

const printed = { absolute: 0.05, reason: 'printed to a tenth of an ampere' } as const;

export const overloadSettingCases: readonly SheetCase[] = [
  {
    name: 'example D8: 32 A, service factor 1.15: 40.0 A, ceiling 44.8 A',
    source: necExampleD8,
    inputs: { current: 32, rule: 'us', mark: 'service-factor-1.15-or-rise-40', place: 'in-line' },
    outputs: { rated: 32, highest: 40, ceiling: 44.8 },
    tolerance: printed,
    notes: ['CAUTION_ELECTRICAL', 'OVERLOAD_US'],
  },
  {
    name: 'example D8: 38 A, rise of 40 degC: 47.5 A, ceiling 53.2 A',
    source: necExampleD8,
    inputs: { current: 38, rule: 'us', mark: 'service-factor-1.15-or-rise-40', place: 'in-line' },
    outputs: { rated: 38, highest: 47.5, ceiling: 53.2 },
    tolerance: printed,
  },
  {
    name: 'NEC 430.32: without either mark 115 % and 130 %',
    source: necMotorArticle,
    inputs: { current: 20, rule: 'us', mark: 'neither', place: 'in-line' },
    outputs: { highest: 23, ceiling: 26 },
    tolerance: printed,
  },
  {
    name: 'relay inside a delta at 0.58 times the nameplate current',
    source: switchgearAppendix,
    inputs: { current: 100, rule: 'iec', mark: 'neither', place: 'inside-delta' },
    outputs: { rated: 58, highest: 58, ceiling: 58 },
    tolerance: { absolute: 0.5, reason: '0.58 is printed to two digits' },
  },
];
