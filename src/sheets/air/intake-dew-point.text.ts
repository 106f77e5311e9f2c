import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const intakeDewPointText: SheetText = {
  en: {
    title: 'Pressure dew point of undried air',
    about:
      'Where the air of a room, compressed and not dried, starts to condense. A pipe colder than this gets wet.',
    inputs: {
      temperature: 'Temperature of the intake',
      relativeHumidity: 'Relative humidity of the intake',
      atmosphere: 'Atmospheric pressure',
      pressure: 'Pressure of the line',
    },
    outputs: {
      humidityRatio: 'Humidity ratio of the intake',
      vapourPressure: 'Vapour pressure in the line, nothing condensed',
      lineDewPoint: 'Pressure dew point (frost point below 0.01 °C)',
    },
    notes: { VAPOUR_IDEAL: notes.VAPOUR_IDEAL },
    problems: {
      VAPOUR_OVER_TOTAL: problems.VAPOUR_OVER_TOTAL,
      DEW_POINT_RANGE: problems.DEW_POINT_RANGE,
    },
  },
};
