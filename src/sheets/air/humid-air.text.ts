import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const humidAirText: SheetText = {
  en: {
    title: 'Moist air',
    about: 'Vapour, humidity ratio and dew point of air of a temperature, humidity and pressure.',
    inputs: {
      temperature: 'Temperature',
      relativeHumidity: 'Relative humidity',
      pressure: 'Pressure of the air',
    },
    outputs: {
      vapourPressure: 'Vapour pressure',
      humidityRatio: 'Humidity ratio',
      vapourDensity: 'Mass of vapour in a volume',
      dewPoint: 'Dew point (frost point below 0.01 °C)',
    },
    notes: { VAPOUR_IDEAL: notes.VAPOUR_IDEAL },
    problems: {
      VAPOUR_OVER_TOTAL: problems.VAPOUR_OVER_TOTAL,
      DEW_POINT_RANGE: problems.DEW_POINT_RANGE,
    },
  },
};
