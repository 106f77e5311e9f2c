import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const coldestPointText: SheetText = {
  en: {
    title: 'Pipe route against the dew point',
    about:
      'Every point of the route, with its own pressure and its coldest wall, against the dew point of the air in it.',
    inputs: {
      dewPoint: 'Pressure dew point after the dryer (frost point below 0.01 °C)',
      dewPointPressure: 'Pressure at the dryer',
      atmosphere: 'Atmospheric pressure',
      pressures: 'Pressure at each point',
      temperatures: 'Lowest wall temperature at each point',
      flow: 'Air that passes',
      time: 'Time (a shift)',
      margin: 'Margin wanted',
    },
    outputs: {
      dewPoints: 'Dew point at each point',
      margins: 'Margin at each point',
      smallestMargin: 'Smallest margin',
      point: 'Where, counted from 1',
      waterCarried: 'Water in a cubic metre of normal air',
      condensate: 'Water that falls out on the route',
    },
    notes: {
      ROUTE_CONDENSES: 'The route is colder than the dew point: water falls out in the pipe.',
      ROUTE_FREEZES: 'The water that falls out freezes there and can close the pipe.',
      ROUTE_MARGIN_SMALL:
        'Less than the margin of {margin} K over the dew point (5 to 10 K is habit, memory).',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
      VAPOUR_IDEAL: notes.VAPOUR_IDEAL,
    },
    problems: {
      AIR_BELOW_VACUUM: problems.AIR_BELOW_VACUUM,
      DEW_POINT_RANGE: problems.DEW_POINT_RANGE,
      VAPOUR_OVER_TOTAL: problems.VAPOUR_OVER_TOTAL,
    },
  },
};
