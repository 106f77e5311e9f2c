import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { logs } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { celsius, milligram, milligramMinute } from './ct-units.ts';
import { epaTables } from './sources.ts';

/**
 * CT for Giardia by free chlorine from the published regression.
 *
 * Method   T < 12.5 degC:  CT = 0.353 L (12.006 + exp(2.46 - 0.073 T + 0.125 C + 0.389 pH))
 *          else            CT = 0.361 L (-2.261 + exp(2.69 - 0.065 T + 0.111 C + 0.361 pH))
 *          T in degC, C in mg/L, CT in mg min/L
 * Symbols  T   temperature  scalar  K
 *          pH  acidity      scalar
 *          C   chlorine     scalar  kg/m3
 *          L   logs         scalar
 * Returns  CT, kg s/m3
 * Assumes  the table's own range; 0 to 17 % above the printed figures
 * Cost     O(1)
 * Source   EPA 815-R-20-003, 2020, through an open-source transcription
 */
export const giardiaRegression = (
  temperature: number,
  acidity: number,
  chlorine: number,
  wanted: number,
): number => {
  const [t, c] = [celsius(temperature), chlorine / milligram];
  const ct =
    t < 12.5
      ? 0.353 * wanted * (12.006 + Math.exp(2.46 - 0.073 * t + 0.125 * c + 0.389 * acidity))
      : 0.361 * wanted * (-2.261 + Math.exp(2.69 - 0.065 * t + 0.111 * c + 0.361 * acidity));
  return milligramMinute * ct;
};

interface RegressionInputs {
  readonly temperature: number;
  readonly acidity: number;
  readonly chlorine: number;
  readonly logs: number;
}

// fitted to the table: beyond it an exponential runs away, so the fields end where the table does, but for rounding
const slack = 1e-9;

export const giardiaRegressionSheet = defineSheet({
  id: 'hygiene/giardia-regression',
  version: 1,
  inputs: {
    temperature: numberField('temperature', 'T', {
      least: 273.65 - slack,
      most: 298.15 + slack,
      table: epaTables,
    }),
    acidity: numberField('acidity', '\\mathrm{pH}', { least: 6 - slack, most: 9 + slack, table: epaTables }),
    chlorine: numberField('soluteConcentration', 'C', {
      least: 0.4 * milligram - slack,
      most: 3 * milligram + slack,
      table: epaTables,
    }),
    logs: numberField('ratio', 'L', { ...logs, assumed: 3 }),
  },
  outputs: { needed: numberField('concentrationTime', '\\mathrm{CT}') },
  formula: [
    '\\mathrm{CT} = 0.353 L ( 12.006 + e^{2.46 - 0.073 T + 0.125 C + 0.389\\, \\mathrm{pH}} ), \\quad T < 12.5 \\,^{\\circ}\\mathrm{C}',
    '\\mathrm{CT} = 0.361 L ( -2.261 + e^{2.69 - 0.065 T + 0.111 C + 0.361\\, \\mathrm{pH}} ), \\quad T \\ge 12.5 \\,^{\\circ}\\mathrm{C}',
  ],
  limits: [
    authority,
    always('CT_REGRESSION_HIGH'),
    always('CT_NOT_FOR_RINSE'),
    always('CT_RESIDUAL'),
    chemicalCaution,
  ],
  sources: [epaTables],
  compute: (i: RegressionInputs) => ({
    needed: giardiaRegression(i.temperature, i.acidity, i.chlorine, i.logs),
  }),
});
