import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { times } from './bounds.ts';
import { always, authority, chemicalCaution } from './caution.ts';
import { milligramMinute } from './ct-units.ts';
import { ozoneArticle } from './sources.ts';

/**
 * Lower 95 % bound of the logs of several bacteria by ozone in purified water at 21 degC.
 *
 * Method   L = 3.80 CT + 1.84, CT in mg min/L
 * Symbols  CT  ct  scalar  kg s/m3  > 0; the line does not go through the origin
 * Returns  logs
 * Cost     O(1)
 * Source   Frontiers in Microbiology 14:1258381, 2024, abstract
 */
export const ozoneBacteriaLogs = (ct: number): number => 3.8 * (ct / milligramMinute) + 1.84;

export const ozoneBacteriaSheet = defineSheet({
  id: 'hygiene/ozone-bacteria',
  version: 1,
  inputs: {
    residual: numberField('soluteConcentration', 'C', { above: 0, most: 0.02 }),
    time: numberField('time', 't', { above: 0, most: times.most }),
  },
  outputs: { ct: numberField('concentrationTime', '\\mathrm{CT}'), reached: numberField('ratio', 'L') },
  formula: ['L = 3.80\\, \\mathrm{CT} + 1.84, \\quad \\mathrm{CT} = C t'],
  limits: [
    authority,
    always('OZONE_LINE_NO_ORIGIN'),
    // the one dose that the source prints
    { code: 'OZONE_LINE_BEYOND', broken: (_, { ct }) => ct > 0.832 * milligramMinute * (1 + 1e-9) },
    chemicalCaution,
  ],
  sources: [ozoneArticle],
  compute: ({ residual, time }: { readonly residual: number; readonly time: number }) => ({
    ct: residual * time,
    reached: ozoneBacteriaLogs(residual * time),
  }),
});
