import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { always, chemicalCaution } from './caution.ts';
import { chlorineLiterature } from './sources.ts';

export const hypochloritePercents = ['trade', 'available chlorine', 'sodium hypochlorite'] as const;
/** Which percentage stands on the drum: by volume, or by weight of one of two things. */
export type HypochloritePercent = (typeof hypochloritePercents)[number];

/** Molar mass of NaOCl over that of Cl2, 74.44/70.906 g/mol; the trade rounds to 1.05. */
const hypochloriteOverChlorine = 74.44 / 70.906;

/**
 * Available chlorine of a hypochlorite solution.
 *
 * Method   trade: 10 g/L a per cent;  available by weight: w rho;  hypochlorite by weight: w rho 70.906/74.44
 * Symbols  share    scalar  the percentage on the drum, as a share
 *          density  scalar  kg/m3
 * Returns  available chlorine, kg/m3
 * Cost     O(1)
 * Source   trade literature that quotes a handbook of chlorination of 1972
 */
export const availableChlorine = (which: HypochloritePercent, share: number, density: number): number =>
  which === 'trade'
    ? 1000 * share
    : which === 'available chlorine'
      ? share * density
      : (share * density) / hypochloriteOverChlorine;

interface HypochloriteInputs {
  readonly which: HypochloritePercent;
  readonly percent: number;
  readonly density: number;
}

export const hypochloriteSheet = defineSheet({
  id: 'hygiene/hypochlorite',
  version: 1,
  inputs: {
    which: choiceField<HypochloritePercent>('\\text{which}', hypochloritePercents),
    percent: numberField('ratio', 'p', { least: 0, most: 0.5 }),
    density: numberField('density', '\\rho', { least: 900, most: 1500 }),
  },
  outputs: {
    chlorine: numberField('soluteConcentration', 'C'),
    trade: numberField('ratio', 'p_t'),
    byWeight: numberField('massFraction', 'w_{\\mathrm{Cl}}'),
    hypochlorite: numberField('massFraction', 'w_{\\mathrm{NaOCl}}'),
  },
  formula: [
    'p_t = \\frac{C}{1000}, \\quad w_{\\mathrm{Cl}} = \\frac{C}{\\rho}, \\quad w_{\\mathrm{NaOCl}} = \\frac{74.44}{70.906} \\frac{C}{\\rho} \\quad (\\mathrm{kg/m^3})',
  ],
  limits: [always('HYPOCHLORITE_WHICH_PERCENT'), always('HYPOCHLORITE_AGES'), chemicalCaution],
  sources: [chlorineLiterature],
  compute: ({ which, percent, density }: HypochloriteInputs) => {
    const chlorine = availableChlorine(which, percent, density);
    return {
      chlorine,
      trade: chlorine / 1000,
      byWeight: chlorine / density,
      hypochlorite: (hypochloriteOverChlorine * chlorine) / density,
    };
  },
});
