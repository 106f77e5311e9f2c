import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

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
      REGULATOR_WIDE_OPEN:
        'The regulator gets too little to regulate: it stands wide open as a restriction, and its setting means nothing.',
      FILTER_DIRTY:
        'Loss of a clean filter; a dirty one loses several times as much. Typical droop is 0.2 to 0.6 bar at the rated flow (memory): take the curve of the data sheet.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: {
      FILTER_TAKES_ALL: 'The filter would lose all of the pressure at this flow: it is far too small.',
      REGULATOR_DROOPS_AWAY:
        'The droop at this flow is as much as the setting: the regulator is far too small.',
    },
    options: { regulating: { regulates: 'regulates', 'wide open': 'wide open' } },
  },
};
