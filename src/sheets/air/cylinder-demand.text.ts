import type { SheetText } from '../sheet-text.ts';
import { notes, problems } from './notes.text.ts';

export const cylinderDemandText: SheetText = {
  en: {
    title: 'Air that a cylinder takes per index',
    about:
      'Free air of a cylinder with its tubes, per stroke and per index, and the average flow. It counts that the chamber fills to the full pressure before it is vented.',
    inputs: {
      acting: 'Acting',
      bore: 'Bore',
      rod: 'Rod',
      stroke: 'Stroke',
      cyclesPerIndex: 'Double strokes per index',
      deadExtend: 'Tube and clearance on the side that extends',
      deadRetract: 'Tube and clearance on the side that retracts',
      pressure: 'Supply pressure',
      atmosphere: 'Atmospheric pressure',
      temperature: 'Temperature of the air',
      indexPeriod: 'Index period',
    },
    outputs: {
      extendDraw: 'Air to extend',
      retractDraw: 'Air to retract',
      perIndex: 'Air per index',
      averageFlow: 'Average flow',
      perIndexWithoutRod: 'Air per index, rod left out (shortcut)',
    },
    notes: {
      CYLINDER_NO_TUBES:
        'No tube or clearance volume is given for a side: on short strokes with long tubes 10 to 50 % of the air is missing.',
      CYLINDER_ROD_SHORTCUT:
        'A common shortcut leaves the rod out and says {share} % more; a figure of the customer may be that one.',
      AIR_REFERENCE: notes.AIR_REFERENCE,
      CAUTION_COMPRESSED_AIR: notes.CAUTION_COMPRESSED_AIR,
    },
    problems: { CYLINDER_ROD: problems.CYLINDER_ROD },
    options: { acting: { double: 'double', single: 'single, with a spring' } },
  },
};
