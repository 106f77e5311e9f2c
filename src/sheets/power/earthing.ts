import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { voltages } from './bounds.ts';
import { always, caution } from './caution.ts';

const solid = ['tn-s', 'tn-c-s', 'tt', 'grounded-wye'] as const;
const floating = ['it', 'ungrounded-delta', 'resistance-grounded'] as const;
export type Earthing =
  | (typeof solid)[number]
  | (typeof floating)[number]
  | 'corner-grounded-delta'
  | 'high-leg-delta';
export const earthings: readonly Earthing[] = [
  ...solid,
  ...floating,
  'corner-grounded-delta',
  'high-leg-delta',
];

export interface EarthVoltages {
  /** Of the line that stands highest. */
  readonly highest: number;
  readonly lowest: number;
  /** Of the highest line after a first fault to earth that nothing opens. */
  readonly afterFault: number;
}

/**
 * Voltages of the lines to earth by the arrangement of the supply.
 *
 * Method   wye U/sqrt(3); corner-grounded 0 and U; high leg sqrt(3)/2 U and U/2; unearthed U/sqrt(3), then U
 * Symbols  U  voltage  scalar  V line to line
 * Returns  V: highest, lowest, highest after a first earth fault
 * Assumes  balanced; an unearthed system is held near its middle by capacitance only
 * Cost     O(1)
 * Source   geometry of the phasors; high leg of 240 V: 208 and 120 V, read
 */
export const earthVoltages = (arrangement: Earthing, voltage: number): EarthVoltages => {
  const star = voltage / Math.sqrt(3);
  switch (arrangement) {
    case 'corner-grounded-delta':
      return { highest: voltage, lowest: 0, afterFault: voltage };
    case 'high-leg-delta':
      return {
        highest: (Math.sqrt(3) / 2) * voltage,
        lowest: voltage / 2,
        afterFault: (Math.sqrt(3) / 2) * voltage,
      };
    case 'it':
    case 'ungrounded-delta':
    case 'resistance-grounded':
      return { highest: star, lowest: star, afterFault: voltage };
    default:
      return { highest: star, lowest: star, afterFault: star };
  }
};

interface EarthingInputs {
  readonly arrangement: Earthing;
  readonly voltage: number;
}

/** What an arrangement of the supply means for a line: voltages to earth, and as notes what to ask and look at. */
export const earthingSheet = defineSheet({
  id: 'power/earthing',
  version: 1,
  inputs: {
    arrangement: choiceField<Earthing>('\\text{arrangement}', earthings),
    voltage: numberField('voltage', 'U', voltages),
  },
  outputs: {
    highest: numberField('voltage', 'U_{e,\\max}'),
    lowest: numberField('voltage', 'U_{e,\\min}'),
    afterFault: numberField('voltage', 'U_{e,\\text{fault}}'),
  },
  formula: [
    'U_e = \\frac{U}{\\sqrt{3}} \\text{ (wye)}, \\quad 0, U \\text{ (corner-grounded)}, \\quad \\tfrac{1}{2} U, \\tfrac{\\sqrt{3}}{2} U \\text{ (high leg)}',
    'U_{e,\\text{fault}} = U \\text{ after a first fault of an unearthed or resistance-grounded system}',
  ],
  limits: [
    caution,
    always('EARTHING_ASK'),
    {
      code: 'EARTHING_TN',
      broken: ({ arrangement }) => arrangement === 'tn-s' || arrangement === 'grounded-wye',
    },
    { code: 'EARTHING_TN_C_S', broken: ({ arrangement }) => arrangement === 'tn-c-s' },
    { code: 'EARTHING_TT', broken: ({ arrangement }) => arrangement === 'tt' },
    {
      code: 'EARTHING_UNEARTHED',
      broken: ({ arrangement }) => arrangement === 'it' || arrangement === 'ungrounded-delta',
    },
    { code: 'EARTHING_RESISTANCE', broken: ({ arrangement }) => arrangement === 'resistance-grounded' },
    { code: 'EARTHING_CORNER', broken: ({ arrangement }) => arrangement === 'corner-grounded-delta' },
    { code: 'EARTHING_HIGH_LEG', broken: ({ arrangement }) => arrangement === 'high-leg-delta' },
    {
      code: 'EARTHING_SLASH_RATING',
      broken: ({ voltage }, { highest, afterFault }) =>
        Math.max(highest, afterFault) > (voltage / Math.sqrt(3)) * 1.05,
    },
    {
      code: 'EARTHING_DRIVE_FILTERS',
      broken: ({ voltage }, { highest, afterFault }) =>
        Math.max(highest, afterFault) > (voltage / Math.sqrt(3)) * 1.05,
    },
    always('EARTHING_RESIDUAL_DEVICE'),
  ],
  sources: [
    {
      title: 'DOE Handbook, Electrical Safety',
      edition: 'HDBK-1092-98',
      place: 'figure 4-5 on the high leg; public transcription',
      mark: 'read',
    },
    { title: 'geometry of balanced phasors', place: 'derived', mark: 'computed' },
  ],
  compute: (i: EarthingInputs) => earthVoltages(i.arrangement, i.voltage),
});
