import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const filterRegulatorText: SheetText = {
  en: {
    title: 'Filter and regulator',
    about:
      'Pressure behind filter and regulator at a flow: the filter by what it loses at a flow stated, the regulator by its droop.',
    inputs: {
      flow: 'Free air, at the peak',
      pressure: 'Pressure before the filter',
      atmosphere: 'Atmospheric pressure',
      filterLoss: 'Loss of the filter as stated',
      filterFlow: 'at a flow of',
      filterPressure: 'and a pressure of',
      setPressure: 'Pressure that the regulator is set to',
      droop: 'Droop of the regulator as stated',
      droopFlow: 'at a flow of',
      leastDifference: 'Least difference over the regulator',
    },
    outputs: {
      filterLossNow: 'Loss of the filter',
      filteredPressure: 'Pressure before the regulator',
      outletPressure: 'Pressure behind the regulator',
      regulating: 'Regulator',
    },
    notes: {
      REGULATOR_WIDE_OPEN: notes.REGULATOR_WIDE_OPEN,
      FILTER_DIRTY: notes.FILTER_DIRTY,
      REGULATOR_DROOP: notes.REGULATOR_DROOP,
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      FILTER_TAKES_ALL: problems.FILTER_TAKES_ALL,
      REGULATOR_DROOPS_AWAY: problems.REGULATOR_DROOPS_AWAY,
    },
    options: { regulating: { regulates: 'regulates', 'wide open': 'wide open' } },
  },
};
