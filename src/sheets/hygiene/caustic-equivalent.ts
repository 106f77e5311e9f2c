import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { between, tablePlace } from '../table-place.ts';
import { shares } from './bounds.ts';
import { causticFahrenheit, causticMinutes, causticPercent } from './caustic-table.ts';
import { always, authority, chemicalCaution, heatCaution } from './caution.ts';
import { causticOrdinance } from './sources.ts';

const toFahrenheit = (kelvin: number): number => kelvin * 1.8 - 459.67;

/**
 * Caustic of equal bactericidal value, from the table.
 *
 * Method   ln C straight between the printed ones against temperature and ln t
 * Symbols  T  temperature  scalar  K  120 to 170 degF
 *          t  time         scalar  s  3 to 7 min
 * Returns  mass fraction of NaOH; off the table it is refused before
 * Cost     O(1)
 * Source   table of the US milk ordinance, memory
 */
export const causticFromTable = (temperature: number, time: number): number => {
  const column = tablePlace(causticFahrenheit, toFahrenheit(temperature), 'interpolated', 'lower');
  const row = tablePlace(causticMinutes.map(Math.log), Math.log(time / 60), 'interpolated', 'lower');
  const logarithm = between(row, (r) => between(column, (c) => Math.log(causticPercent[r]![c]!)));
  return Math.exp(logarithm) / 100;
};

/**
 * The same from a fit of the 18 printed values, worst error 0.9 %.
 *
 * Method   C = 0.430 1.495^((170 - T)/10) (t/5)^-0.558 per cent, T in degF, t in min
 * Returns  mass fraction of NaOH
 * Cost     O(1)
 * Source   fitted to the table, computed
 */
export const causticFromFit = (temperature: number, time: number): number =>
  0.0043 * 1.495 ** ((170 - toFahrenheit(temperature)) / 10) * (time / 300) ** -0.558;

export const causticMethods = ['table', 'fit'] as const;
type CausticMethod = (typeof causticMethods)[number];

interface EquivalentInputs {
  readonly temperature: number;
  readonly time: number;
  readonly caustic: number;
  readonly method: CausticMethod;
}

const toKelvin = (fahrenheit: number): number => (fahrenheit + 459.67) / 1.8;
// the fields end where the table does, but for the rounding of a conversion
const slack = 1e-6;

export const causticEquivalentSheet = defineSheet({
  id: 'hygiene/caustic-equivalent',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', {
      least: toKelvin(120) - slack,
      most: toKelvin(170) + slack,
      table: causticOrdinance,
    }),
    time: numberField('time', 't', { least: 180 - slack, most: 420 + slack, table: causticOrdinance }),
    caustic: numberField('massFraction', 'C', { ...shares, assumed: 0 }),
    method: choiceField<CausticMethod>('\\text{method}', causticMethods, 'table'),
  },
  outputs: {
    equal: numberField('massFraction', 'C_{\\mathrm{eq}}'),
    ratio: numberField('ratio', 'C / C_{\\mathrm{eq}}'),
  },
  formula: [
    'C_{\\mathrm{eq}} = \\exp \\left( \\ln C_k \\text{ straight in } T \\text{ and } \\ln t \\right)',
    'C_{\\mathrm{eq}} \\approx 0.430 \\cdot 1.495^{(170 - T_F)/10} \\left( \\frac{t}{5} \\right)^{-0.558} \\, [\\%]',
  ],
  limits: [
    authority,
    always('CAUSTIC_TABLE_MEMORY'),
    always('CAUSTIC_NOT_SOIL'),
    { code: 'CAUSTIC_WEAKER', broken: ({ caustic }, { ratio }) => caustic > 0 && ratio < 1 - 1e-9 },
    chemicalCaution,
    heatCaution,
  ],
  sources: [causticOrdinance],
  compute: (i: EquivalentInputs) => {
    const equal = (i.method === 'fit' ? causticFromFit : causticFromTable)(i.temperature, i.time);
    return { equal, ratio: i.caustic / equal };
  },
});
