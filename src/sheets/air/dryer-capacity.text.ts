import type { SheetText } from '../sheet-text.ts';
import { notes } from './notes.text.ts';

export const dryerCapacityText: SheetText = {
  en: {
    title: 'Capacity of a refrigerated dryer at the site',
    about:
      'Flow that a refrigerated dryer still dries at the site’s pressure, room and inlet temperature, and the rated flow that a demand needs.',
    inputs: {
      table: 'Table of factors',
      ratedFlow: 'Rated flow',
      pressure: 'Pressure',
      ambient: 'Highest temperature of the room',
      inlet: 'Temperature of the air at the inlet',
      dewPoint: 'Pressure dew point wanted',
      flow: 'Flow to be dried',
    },
    outputs: {
      factor: 'Factor on the rated flow',
      capacity: 'Capacity at the site',
      ratedNeeded: 'Rated flow that is needed',
    },
    notes: {
      DRYER_TOO_SMALL: 'The dryer is too small here: its dew point rises above the one wanted.',
      DRYER_TABLES_DIFFER:
        'Factors of table {table}: {factor}. Table {other}, another maker with another rating point, gives {theirs}. Take the table of the dryer that is there.',
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    options: {
      table: {
        A: 'A: rated 38 °C inlet, 38 °C room, 7 bar(g), +3 °C',
        B: 'B: rated 35 °C inlet, 25 °C room, 7 bar(g), +3 °C',
      },
    },
  },
};
