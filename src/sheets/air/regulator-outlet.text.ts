import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const regulatorOutletText: SheetText = {
  en: {
    title: 'Pressure behind a regulator',
    about:
      'Pressure behind a regulator at a flow, by its setting and droop, and whether it regulates at all.',
    inputs: {
      flow: 'Free air, at the peak',
      pressure: 'Pressure before the regulator',
      setPressure: 'Pressure that the regulator is set to',
      droop: 'Droop of the regulator as stated',
      droopFlow: 'at a flow of',
      leastDifference: 'Least difference over the regulator',
    },
    outputs: { outletPressure: 'Pressure behind the regulator', regulating: 'Regulator' },
    notes: {
      REGULATOR_WIDE_OPEN: notes.REGULATOR_WIDE_OPEN,
      REGULATOR_DROOP: notes.REGULATOR_DROOP,
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      REGULATOR_NO_SUPPLY: 'Less pressure comes than the regulator itself needs: nothing is left behind it.',
      REGULATOR_DROOPS_AWAY: problems.REGULATOR_DROOPS_AWAY,
    },
    options: { regulating: { regulates: 'regulates', 'wide open': 'wide open' } },
  },
};
