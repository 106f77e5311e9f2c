import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, caution } from './caution.ts';
import { iecConductor, iecResistanceTable, iecSizes } from './iec-conductors.ts';

export type ConductorClass = 'class-1-or-2' | 'class-5';

/** Per kelvin of copper, from 20 degC. */
const perKelvin = 0.00393;
const tableTemperature = 293.15;

/**
 * Greatest resistance of a copper conductor at its temperature.
 *
 * Method   r = R_20 (1 + 0.00393 (T - 20))
 * Symbols  T  temperature  scalar  K of the conductor
 * Returns  ohm/m
 * Cost     O(sizes)
 * Source   IEC 60228, plain copper
 */
export const resistanceIec = (size: string, conductorClass: ConductorClass, temperature: number): number =>
  iecConductor(size).resistance[conductorClass === 'class-1-or-2' ? 0 : 1] *
  1e-3 *
  (1 + perKelvin * (temperature - tableTemperature));

interface ResistanceIecInputs {
  readonly size: string;
  readonly conductorClass: ConductorClass;
  readonly temperature: number;
}

export const resistanceIecSheet = defineSheet({
  id: 'power/resistance-iec',
  version: 1,
  inputs: {
    size: { ...choiceField('S', iecSizes), table: iecResistanceTable },
    conductorClass: choiceField<ConductorClass>('\\text{class}', ['class-1-or-2', 'class-5'], 'class-1-or-2'),
    temperature: numberField('temperature', 'T', { least: 273.15, most: 363.15, assumed: 343.15 }),
  },
  outputs: { resistance: numberField('resistancePerLength', 'r') },
  formula: ['r = R_{20} \\left( 1 + 0.00393\\, (T - 20\\,^{\\circ}\\mathrm{C}) \\right)'],
  limits: [caution, always('IEC_60228'), always('IEC_REACTANCE')],
  sources: [iecResistanceTable],
  compute: (i: ResistanceIecInputs) => ({
    resistance: resistanceIec(i.size, i.conductorClass, i.temperature),
  }),
});
