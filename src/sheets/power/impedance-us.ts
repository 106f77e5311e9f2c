import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { powerFactors } from './bounds.ts';
import { always, caution } from './caution.ts';
import { impedanceTable, usConductor, usSizes } from './us-conductors.ts';

export type Conduit = 'pvc' | 'steel';

/** Per kelvin of copper, from 75 degC: 0.00393/(1 + 0.00393 (75 - 20)). */
const perKelvinFrom75 = 0.00323;
const tableTemperature = 348.15;
const tableFrequency = 60;
const perKilometre = 1e-3;

export interface LineImpedance {
  readonly resistance: number;
  readonly reactance: number;
}

/**
 * Resistance and reactance of a copper conductor in conduit, US table.
 *
 * Method   r = R_75 (1 + 0.00323 (T - 75)), x = X_60 f/60
 * Symbols  T  temperature  scalar  K of the conductor
 *          f  frequency    scalar  Hz
 * Returns  ohm/m, to neutral
 * Assumes  three single conductors in one conduit
 * Cost     O(sizes)
 * Source   NEC chapter 9 table 9; temperature by table 8's note
 */
export const impedanceUs = (
  size: string,
  conduit: Conduit,
  temperature: number,
  frequency: number,
): LineImpedance => {
  const conductor = usConductor(size);
  const column = conduit === 'pvc' ? 0 : 1;
  return {
    resistance:
      conductor.resistance[column] * perKilometre * (1 + perKelvinFrom75 * (temperature - tableTemperature)),
    reactance: (conductor.reactance[column] * perKilometre * frequency) / tableFrequency,
  };
};

/** Impedance that gives the drop at a power factor: r cos(phi) + x sin(phi), ohm/m, line to neutral. */
export const effectiveImpedance = ({ resistance, reactance }: LineImpedance, powerFactor: number): number =>
  resistance * powerFactor + reactance * Math.sqrt(Math.max(0, 1 - powerFactor * powerFactor));

interface ImpedanceUsInputs {
  readonly size: string;
  readonly conduit: Conduit;
  readonly temperature: number;
  readonly frequency: number;
  readonly powerFactor: number;
}

export const impedanceUsSheet = defineSheet({
  id: 'power/impedance-us',
  version: 1,
  inputs: {
    size: { ...choiceField('\\text{size}', usSizes), table: impedanceTable },
    conduit: choiceField<Conduit>('\\text{conduit}', ['pvc', 'steel']),
    temperature: numberField('temperature', 'T', {
      least: 273.15,
      most: 363.15,
      assumed: tableTemperature,
      table: impedanceTable,
    }),
    frequency: numberField('frequency', 'f', {
      least: 40,
      most: 70,
      assumed: tableFrequency,
      table: impedanceTable,
    }),
    powerFactor: numberField('ratio', '\\cos\\varphi', { ...powerFactors, assumed: 0.85 }),
  },
  outputs: {
    resistance: numberField('resistancePerLength', 'r'),
    reactance: numberField('resistancePerLength', 'x'),
    effective: numberField('resistancePerLength', 'z_e'),
  },
  formula: [
    'r = R_{75} \\left( 1 + 0.00323\\, (T - 75\\,^{\\circ}\\mathrm{C}) \\right), \\quad x = X_{60} \\frac{f}{60\\,\\mathrm{Hz}}',
    'z_e = r \\cos\\varphi + x \\sin\\varphi',
  ],
  limits: [caution, always('NEC_CHAPTER_9'), always('IMPEDANCE_TO_NEUTRAL')],
  sources: [impedanceTable],
  compute: (i: ImpedanceUsInputs) => {
    const line = impedanceUs(i.size, i.conduit, i.temperature, i.frequency);
    return { ...line, effective: effectiveImpedance(line, i.powerFactor) };
  },
});
