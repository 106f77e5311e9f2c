import type { SheetText } from '../sheet-text.ts';

export const dryerChoiceText: SheetText = {
  en: {
    title: 'Is a refrigerated dryer enough?',
    about:
      'The pressure dew point that the coldest wall, the class asked and contact with product need together, and whether a refrigerated dryer reaches it.',
    inputs: {
      coldest: 'Coldest wall after the dryer (night, cold room, outside)',
      margin: 'Margin over the dew point',
      waterClass: 'Class of water asked (ISO 8573-1)',
      contact: 'Air touches product or the inside of the bottle',
      edition: 'Edition of the food guideline',
      refrigeratedDewPoint: 'Dew point of a refrigerated dryer',
    },
    outputs: {
      neededDewPoint: 'Pressure dew point needed',
      routeMargin: 'Margin that a refrigerated dryer leaves on the route',
      dryer: 'Kind of dryer',
    },
    notes: {
      DRYER_ROUTE_COLD: 'The route gets too cold for a refrigerated dryer: water or ice in the pipe.',
      DRYER_CLASS_DRY: 'The class asked is drier than a refrigerated dryer gives (class 4 at best).',
      DRYER_CONTACT:
        'Air that touches product needs water class 2, a pressure dew point of -40 °C: a refrigerated dryer alone does not give it.',
      CONTACT_EDITIONS:
        'The food guideline, read second hand, asked for 2:2:1 in direct and 2:4:2 in indirect contact; its newer edition asks for 1:2:1 in both. The edition agreed and the local code decide.',
      DRYER_MARGIN_HABIT:
        'A margin of 5 to 10 K is habit (memory); a military hospital guide puts the limit of refrigerated dryers at 1.7 to 3.9 °C.',
    },
    options: {
      waterClass: {
        '-': 'not asked',
        '1': '1 (-70 °C)',
        '2': '2 (-40 °C)',
        '3': '3 (-20 °C)',
        '4': '4 (+3 °C)',
        '5': '5 (+7 °C)',
        '6': '6 (+10 °C)',
      },
      contact: { none: 'no', indirect: 'indirectly', direct: 'directly' },
      edition: { newer: 'newer (1:2:1 for both)', older: 'older (2:2:1 direct, 2:4:2 indirect)' },
      dryer: {
        refrigerated: 'refrigerated',
        'desiccant or membrane': 'desiccant, or membrane at the point of use',
      },
    },
  },
};
