import type { SheetText } from '../sheet-text.ts';
import { bottleMaterialWords } from './bottle-materials.ts';
import { notesOf } from './notes.text.ts';

export const bottleHeatText: SheetText = {
  en: {
    title: 'Heat taken up by bottles',
    about: 'Heat that bottles of a material take to follow the bath from one temperature to another.',
    inputs: {
      material: 'Material',
      mass: 'Mass of a bottle',
      rate: 'Bottles',
      from: 'Temperature on entry to this zone',
      to: 'Temperature of the zone',
    },
    outputs: {
      specificHeat: 'Specific heat',
      density: 'Density',
      perBottle: 'Heat of a bottle',
      heatFlow: 'Heat of all of them',
    },
    options: { material: bottleMaterialWords },
    notes: notesOf('MATERIAL_FROM_MEMORY'),
  },
};
