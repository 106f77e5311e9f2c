import type { SheetCase } from '../sheet-case.ts';

const highLeg = {
  title: 'DOE Handbook, Electrical Safety',
  edition: 'HDBK-1092-98',
  place: 'figure 4-5, public transcription',
  mark: 'read',
} as const;
const geometry = {
  title: 'geometry of balanced phasors',
  place: 'hand calculation',
  mark: 'computed',
} as const;
const volt = { absolute: 0.5, reason: 'printed in whole volts' } as const;

export const earthingCases: readonly SheetCase[] = [
  {
    name: 'high-leg delta of 240 V: 208 V from the high leg, 120 V from the others',
    source: highLeg,
    inputs: { arrangement: 'high-leg-delta', voltage: 240 },
    outputs: { highest: 208, lowest: 120 },
    tolerance: volt,
    notes: ['CAUTION_ELECTRICAL', 'EARTHING_HIGH_LEG', 'EARTHING_SLASH_RATING', 'EARTHING_RESIDUAL_DEVICE'],
  },
  {
    name: 'grounded wye of 480 V: 277 V',
    source: geometry,
    inputs: { arrangement: 'grounded-wye', voltage: 480 },
    outputs: { highest: 277, lowest: 277, afterFault: 277 },
    tolerance: volt,
    notes: ['EARTHING_TN'],
  },
  {
    name: 'IT of 400 V: 231 V, and 400 V after a first fault',
    source: geometry,
    inputs: { arrangement: 'it', voltage: 400 },
    outputs: { highest: 231, afterFault: 400 },
    tolerance: volt,
    notes: ['EARTHING_UNEARTHED', 'EARTHING_DRIVE_FILTERS'],
  },
  {
    name: 'corner-grounded delta of 480 V: one line at earth, two at 480 V',
    source: geometry,
    inputs: { arrangement: 'corner-grounded-delta', voltage: 480 },
    outputs: { highest: 480, lowest: 0 },
    tolerance: volt,
    notes: ['EARTHING_CORNER', 'EARTHING_SLASH_RATING'],
  },
];
