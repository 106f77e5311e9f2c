import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const pressureDewPointText: SheetText = {
  en: {
    title: 'Dew point at another pressure',
    about:
      'Dew point of the same air after a regulator or at the atmosphere: pressure dew point to atmospheric dew point and back.',
    inputs: {
      dewPoint: 'Dew point',
      scale: 'Below freezing the dew point is',
      pressure: 'Pressure at which it is stated',
      otherPressure: 'Pressure at which it is asked',
      atmosphere: 'Atmospheric pressure',
    },
    outputs: {
      vapourPressure: 'Vapour pressure where stated',
      otherVapourPressure: 'Vapour pressure where asked',
      frostPoint: 'Dew point where asked (frost point below 0.01 °C)',
      dewPointOverWater: 'Dew point where asked, over water also below freezing',
    },
    notes: {
      DEW_POINT_TWO_SCALES:
        'Below 0.01 °C the frost point (over ice) and the dew point over supercooled water differ; charts mix them. The -23 °C of many charts for +3 °C at 7 bar(g) is over water; as frost point it is -20.8 °C.',
      VAPOUR_IDEAL: notes.VAPOUR_IDEAL,
    },
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      DEW_POINT_RANGE: problems.DEW_POINT_RANGE,
    },
    options: { scale: { 'frost point': 'a frost point, over ice', 'over water': 'over supercooled water' } },
  },
};
