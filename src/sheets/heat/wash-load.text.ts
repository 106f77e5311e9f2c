import type { SheetText } from '../sheet-text.ts';
import { bottleMaterialWords } from './bottle-materials.ts';
import { notesOf } from './notes.text.ts';

export const washLoadText: SheetText = {
  en: {
    title: 'Heat that washing takes',
    about: 'Steady heat of a zone at its rate: bottles, what they carry in, fresh water, surface and walls.',
    inputs: {
      rate: 'Bottles',
      material: 'Material',
      mass: 'Mass of a bottle',
      entry: 'Temperature of the bottles on entry to this zone',
      zone: 'Temperature of the zone',
      carryOver: 'Liquid that a bottle carries in',
      carryTemperature: 'Temperature of that',
      makeUp: 'Fresh water into the bath',
      makeUpTemperature: 'Temperature of that',
      surface: 'Heat lost by the open surface',
      walls: 'Heat lost by the walls',
    },
    outputs: {
      bottles: 'Into the bottles',
      carried: 'Into what they carry in',
      fresh: 'Into fresh water',
      total: 'In all',
    },
    options: { material: bottleMaterialWords },
    notes: {
      ...notesOf('CAUTION_HOT_WATER', 'MATERIAL_FROM_MEMORY'),
      WASH_NO_SURFACE:
        'No loss of the surface or of the walls is given: take it from the sheets of the open tank, or from the exhaust air.',
      WASH_HEATS_ITSELF: 'What comes in is hotter than the zone: it wants cooling, not heat.',
      WASH_FASTER_INDEX:
        'Heat of bottles and carry-over grows with the rate: judge it at the fastest index, and after a hold.',
    },
  },
};
