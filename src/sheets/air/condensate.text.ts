import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const condensateText: SheetText = {
  en: {
    title: 'Water condensed from compressed air',
    about:
      'Water that the intake brings in a shift, what falls out in the aftercooler, what the dryer takes and what goes on.',
    inputs: {
      intakeFlow: 'Flow at the intake of the compressor',
      temperature: 'Temperature of the intake',
      relativeHumidity: 'Relative humidity of the intake',
      atmosphere: 'Atmospheric pressure',
      pressure: 'Pressure of the line',
      aftercooler: 'Temperature after the aftercooler',
      dryerDewPoint: 'Pressure dew point of the dryer',
      time: 'Time (a shift)',
    },
    outputs: {
      dryMassFlow: 'Flow of dry air',
      waterIn: 'Water brought in',
      condensedInAftercooler: 'Condensed in the aftercooler',
      leftAfterAftercooler: 'Water left after the aftercooler',
      condensedInDryer: 'Taken by the dryer',
      leftAfterDryer: 'Water left after the dryer',
    },
    notes: {
      CONDENSATE_DRAINS:
        'This water must leave through drains that work by themselves; the condensate of an oiled compressor is oily waste.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
      VAPOUR_IDEAL: notes.VAPOUR_IDEAL,
    },
    problems: { VAPOUR_OVER_TOTAL: problems.VAPOUR_OVER_TOTAL },
  },
};
