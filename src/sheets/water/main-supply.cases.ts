import type { SheetCase } from '../sheet-case.ts';
import { arithmetic, epanetEngine } from './sources.ts';

export const mainSupplyCases: readonly SheetCase[] = [
  {
    name: 'fire-flow test 65 / 50 psi at 800 US gal/min: 1 447.9 US gal/min at 20 psi',
    source: {
      title: 'NFPA 291 rated capacity formula',
      place: 'formula read second-hand, number recomputed: a public page rounds 3^0.54 and gives 1 424',
      mark: 'computed',
    },
    inputs: {
      staticPressure: 448159.224,
      residualPressure: 344737.8647,
      testFlow: 0.05047215712,
      exponent: 1 / 0.54,
      flow: 0.09134829537,
    },
    outputs: { pressure: 137895.146 },
    tolerance: { relative: 5e-4, reason: 'five printed digits of the flow' },
    notes: ['MAIN_EXTRAPOLATED'],
  },
  {
    name: 'the same test with exponent 2: 1 385.6 US gal/min at 20 psi',
    source: arithmetic,
    inputs: {
      staticPressure: 448159.224,
      residualPressure: 344737.8647,
      testFlow: 0.05047215712,
      exponent: 2,
      flow: 0.08741777613,
    },
    outputs: { pressure: 137895.146, testDrop: 3 / 13 },
    tolerance: { relative: 5e-4, reason: 'five printed digits of the flow' },
  },
  {
    name: 'EPANET engine, Hazen-Williams main tested at 30 L/s, then 36.46 L/s drawn: 14.059 m left',
    source: epanetEngine,
    inputs: {
      staticPressure: 45.7 * 9806.65,
      residualPressure: 23.653 * 9806.65,
      testFlow: 0.03,
      exponent: 1.852,
      flow: 0.03646,
    },
    outputs: { pressure: 14.059 * 9806.65 },
    tolerance: { relative: 5e-4, reason: 'printed digits' },
  },
];
