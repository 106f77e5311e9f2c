import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const seriesFlowText: SheetText = {
  en: {
    title: 'Flow through components in series',
    about:
      'Free air through valve, tube, silencer and whatever else stands one after the other (ISO 6358), with the pressures between them.',
    inputs: {
      conductances: 'Sonic conductance of each, in the direction of the flow',
      criticalRatios: 'Critical pressure ratio of each',
      upstream: 'Pressure before the first',
      downstream: 'Pressure after the last',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
    },
    outputs: {
      flow: 'Flow',
      pressures: 'Pressure behind each',
      conductance: 'Sonic conductance of the chain',
      criticalRatio: 'Critical pressure ratio of the chain',
    },
    notes: {
      SERIES_NO_FLOW:
        'The pressure after the last is not under the pressure before the first: nothing flows.',
      RESTRICTION_NOZZLE: notes.RESTRICTION_NOZZLE,
      SERIES_ORDER:
        'The order counts. The rule of thumb that adds inverse squares is up to 7 % low, the one that adds inverse cubes up to 5 % high.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: { AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM },
  },
};
