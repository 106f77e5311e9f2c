import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const filterLossText: SheetText = {
  en: {
    title: 'Loss of a filter or dryer',
    about: 'Pressure behind a filter or a dryer at a flow, from what it loses at a flow stated.',
    inputs: {
      flow: 'Free air, at the peak',
      pressure: 'Pressure before the filter',
      atmosphere: 'Atmospheric pressure',
      filterLoss: 'Loss of the filter as stated',
      filterFlow: 'at a flow of',
      filterPressure: 'and a pressure of',
    },
    outputs: { loss: 'Loss of the filter', outletPressure: 'Pressure behind the filter' },
    notes: {
      FILTER_DIRTY: notes.FILTER_DIRTY,
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: { FILTER_TAKES_ALL: problems.FILTER_TAKES_ALL },
  },
};
