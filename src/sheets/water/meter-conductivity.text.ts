import type { SheetText } from '../sheet-text.ts';

export const meterConductivityText: SheetText = {
  en: {
    title: 'Does a magnetic meter count this water?',
    about: 'Conductivity of the water at the site against what magnetic meters want.',
    inputs: {
      conductivity: 'Conductivity of the water at the site',
      ownLimit: 'Least conductivity by the paper of the meter, 0 if not at hand',
    },
    outputs: {
      usualRatio: 'Over the usual limit, 5 µS/cm',
      waterRatio: 'Over the limit that one maker has for water, 20 µS/cm',
      answer: 'Answer',
    },
    options: {
      answer: { counts: 'it counts', 'ask the maker': 'ask the maker', 'does not count': 'does not count' },
    },
    notes: {
      METER_NO_COUNT:
        'The meter sees nothing: valves stay open until the longest fill time. Another kind of meter is needed.',
      METER_ASK: 'Between the two limits: ask the maker of the meter in writing, for water.',
      METER_LIMITS_DIFFER:
        'Makers differ: 5 µS/cm is the usual printed limit, one asks 20 µS/cm for water. The paper of this meter decides.',
      METER_OWN_LIMIT_ODD:
        'That limit is below the usual 5 µS/cm: read the paper again; a maker may also ask more for water.',
      METER_SITE_WATER:
        'Ask what the site fills: softened water conducts, water behind a membrane or mixed bed may not. A filler proven on town water may not count at the site.',
    },
  },
};
