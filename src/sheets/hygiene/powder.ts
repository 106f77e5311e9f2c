import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { concentrations, volumes } from './bounds.ts';
import { always, chemicalCaution } from './caution.ts';
import { cdcDilution } from './sources.ts';

/**
 * Powder for a volume of solution.
 *
 * Method   m/V = C_2/w
 * Symbols  C_2  wanted    scalar  kg/m3  of the active part
 *          w    strength  scalar         share of the powder that is active
 * Returns  kg of powder for a cubic metre
 * Cost     O(1)
 * Source   balance
 */
export const powderDose = (wanted: number, strength: number): number => wanted / strength;

interface PowderInputs {
  readonly strength: number;
  readonly wanted: number;
  readonly volume: number;
}

export const powderSheet = defineSheet({
  id: 'hygiene/powder',
  version: 1,
  inputs: {
    strength: numberField('massFraction', 'w', { least: 1e-4, most: 1 }),
    wanted: numberField('soluteConcentration', 'C_2', concentrations),
    volume: numberField('volume', 'V', volumes),
  },
  outputs: { dose: numberField('soluteConcentration', 'm / V'), mass: numberField('mass', 'm') },
  formula: ['\\frac{m}{V} = \\frac{C_2}{w}'],
  limits: [always('DILUTION_ADD_TO_WATER'), chemicalCaution],
  sources: [cdcDilution],
  compute: ({ strength, wanted, volume }: PowderInputs) => {
    const dose = powderDose(wanted, strength);
    return { dose, mass: dose * volume };
  },
});
