import type { SheetCase } from '../sheet-case.ts';
import { rinseArticle, script } from './sources.ts';

const gallon = 0.003785411784;
/** Avoirdupois ounces in a US gallon, kg/m3. */
const ounces = 0.45359237 / 16 / gallon;
/** 1 gal an hour carried beside the water of that hour, as a thousandth of both for the bottle. */
const thousandth = gallon / 1000;

export const serialRinseCases: readonly SheetCase[] = [
  {
    name: '1 gal/h carried, 99 gal/h of water: 100 to 1',
    source: rinseArticle,
    inputs: { start: 10, carry: thousandth, fresh: 99 * thousandth, stages: 1 },
    outputs: { ratio: 100 },
    tolerance: { relative: 1e-9, reason: 'exact' },
    notes: ['PERFECT_MIXING'],
  },
  {
    name: '10 oz/gal, 1 gal/h carried, 2000 gal/h of water: 2001 to 1, 0.005 oz/gal',
    source: rinseArticle,
    inputs: { start: 10 * ounces, carry: thousandth, fresh: 2000 * thousandth, stages: 1 },
    outputs: { ratio: 2001, left: 0.005 * ounces },
    tolerance: { relative: 6e-4, reason: 'concentration printed with one digit' },
  },
  {
    name: '20 g/L, 4 mL carried, three fresh rinses of 60 mL: 4.88 mg/L with 180 mL',
    source: script,
    inputs: { start: 20, carry: 4e-6, fresh: 60e-6, stages: 3 },
    outputs: { left: 4.88e-3, water: 180e-6 },
    tolerance: { relative: 1e-3, reason: 'three printed digits' },
  },
  {
    name: 'the same 180 mL in one rinse: 434.8 mg/L',
    source: script,
    inputs: { start: 20, carry: 4e-6, fresh: 180e-6, stages: 1 },
    outputs: { left: 0.4348 },
    tolerance: { relative: 1e-3, reason: 'four printed digits' },
  },
];
