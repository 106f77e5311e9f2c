import type { SheetCase } from '../sheet-case.ts';
import { foodGuideline, iso8573 } from './sources.ts';

const exact = { absolute: 1e-6, reason: 'printed whole degrees' } as const;

export const dryerChoiceCases: readonly SheetCase[] = [
  {
    name: 'newer edition, 1:2:1: indirect contact needs -40 degC',
    source: foodGuideline,
    inputs: { coldest: 293.15, contact: 'indirect', edition: 'newer' },
    outputs: { neededDewPoint: 233.15, dryer: 'desiccant or membrane' },
    tolerance: exact,
    notes: ['DRYER_CONTACT', 'CONTACT_EDITIONS'],
  },
  {
    name: 'older edition, 2:4:2: indirect contact needs +3 degC, which a refrigerated dryer gives',
    source: foodGuideline,
    inputs: { coldest: 293.15, contact: 'indirect', edition: 'older' },
    outputs: { neededDewPoint: 276.15, dryer: 'refrigerated' },
    tolerance: exact,
    notes: ['CONTACT_EDITIONS'],
  },
  {
    name: 'older edition, 2:2:1: direct contact needs -40 degC',
    source: foodGuideline,
    inputs: { coldest: 293.15, contact: 'direct', edition: 'older' },
    outputs: { neededDewPoint: 233.15, dryer: 'desiccant or membrane' },
    tolerance: exact,
  },
  {
    name: 'class 3 needs -20 degC',
    source: iso8573,
    inputs: { coldest: 293.15, contact: 'none', waterClass: '3' },
    outputs: { neededDewPoint: 253.15, dryer: 'desiccant or membrane' },
    tolerance: exact,
    notes: ['DRYER_CLASS_DRY'],
  },
  {
    name: 'army manual: a line run outside in freezing places needs more than a refrigerated dryer',
    source: {
      title: 'UFC 3-420-02FA (TM 5-810-4), Compressed air',
      place: 'chapter 6, public transcription',
      mark: 'read',
    },
    inputs: { coldest: 263.15, contact: 'none' },
    outputs: { routeMargin: -13, dryer: 'desiccant or membrane' },
    tolerance: exact,
    notes: ['DRYER_ROUTE_COLD'],
  },
  {
    name: 'military hospital guide: a refrigerated dryer gives 3.9 degC, enough in a room of 20 degC',
    source: {
      title: 'MIL-HDBK-1191',
      place: 'p. 9-37, limit of 35 to 39 degF, public transcription',
      mark: 'read',
    },
    inputs: { coldest: 293.15, contact: 'none', refrigeratedDewPoint: 277.05 },
    outputs: { routeMargin: 16.1, dryer: 'refrigerated' },
    tolerance: exact,
  },
];
