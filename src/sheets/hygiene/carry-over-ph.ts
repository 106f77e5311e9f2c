import { numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { carries, concentrations, flows, rates } from './bounds.ts';
import { causticAcidity } from './caustic-ph.ts';
import { always, chemicalCaution } from './caution.ts';
import { hypochlorousShare } from './hocl-fraction.ts';
import { acidConstant, derived } from './sources.ts';
import { sumpConcentration } from './sump.ts';

interface CarryOverInputs {
  readonly rate: number;
  readonly carry: number;
  readonly carried: number;
  readonly makeUp: number;
}

export const carryOverPhSheet = defineSheet({
  id: 'hygiene/carry-over-ph',
  version: 1,
  inputs: {
    rate: numberField('rate', 'n', { least: 1e-6, most: rates.most }),
    carry: numberField('volume', 'v', carries),
    carried: numberField('soluteConcentration', 'c_{\\mathrm{in}}', { ...concentrations, most: 40 }),
    makeUp: numberField('volumeFlow', 'Q', flows),
  },
  outputs: {
    caustic: numberField('soluteConcentration', 'c'),
    acidity: numberField('acidity', '\\mathrm{pH}'),
    share: numberField('ratio', 'a'),
  },
  formula: [
    'c = \\frac{n v c_{\\mathrm{in}}}{n v + Q}, \\quad \\mathrm{pH} = 14 + \\log_{10} \\frac{s + \\sqrt{s^2 + 4 \\cdot 10^{-14}}}{2}, \\quad s = \\frac{c}{40 \\, \\mathrm{g/mol}}',
    'a = \\frac{1}{1 + 10^{\\mathrm{pH} - 7.569}}',
  ],
  limits: [
    { code: 'CARRY_OVER_SPOILS', broken: (_, { share }) => share < 0.5 },
    always('UNBUFFERED'),
    always('CHLORINE_STRIP_TOTAL'),
    always('WEIGH_TWENTY'),
    chemicalCaution,
  ],
  sources: [derived, acidConstant],
  compute: ({ rate, carry, carried, makeUp }: CarryOverInputs) => {
    const caustic = sumpConcentration(rate, carry, carried, makeUp);
    const acidity = causticAcidity(caustic);
    return { caustic, acidity, share: hypochlorousShare(acidity) };
  },
});
