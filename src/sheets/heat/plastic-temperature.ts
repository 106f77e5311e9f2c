import { choiceField, listField, numberField } from '../fields.ts';
import type { Mark } from '../frame.ts';
import { defineSheet } from '../frame.ts';
import { bottleTemperatures } from './bounds.ts';

export type PlasticBottle = 'PET, one-way' | 'PET, returnable' | 'polycarbonate';

/** Highest temperature of a wash, K, with the mark of its source. */
export const plasticLimits: Readonly<
  Record<PlasticBottle, { readonly highest: number; readonly mark: Mark }>
> = {
  // empty one-way bottles get out of shape from about 55 degC
  'PET, one-way': { highest: 328.15, mark: 'read' },
  // washed at about 60 degC
  'PET, returnable': { highest: 333.15, mark: 'read' },
  // 49 to 60 degC with 1 to 2 % of a detergent made for it
  polycarbonate: { highest: 333.15, mark: 'read' },
};

interface PlasticTemperatureInputs {
  readonly bottle: PlasticBottle;
  readonly temperatures: readonly number[];
}

export const plasticTemperatureSheet = defineSheet({
  id: 'heat/plastic-temperature',
  version: 1,
  inputs: {
    bottle: choiceField<PlasticBottle>('\\text{bottle}', Object.keys(plasticLimits) as PlasticBottle[]),
    temperatures: listField('temperature', 'T_i', bottleTemperatures),
  },
  outputs: {
    hottest: numberField('temperature', 'T_{\\max}'),
    highest: numberField('temperature', 'T_l'),
    margin: numberField('temperatureDifference', 'm'),
  },
  formula: ['T_{\\max} = \\max_i T_i, \\quad m = T_l - T_{\\max}'],
  limits: [
    { code: 'PLASTIC_TOO_HOT', broken: (_, { margin }) => margin < -1e-9 },
    { code: 'PLASTIC_NEAR', broken: (_, { margin }) => margin >= -1e-9 && margin < 3 },
    { code: 'PET_SHRINKS', broken: ({ bottle }) => bottle !== 'polycarbonate' },
    { code: 'POLYCARBONATE_CAUSTIC', broken: ({ bottle }) => bottle === 'polycarbonate' },
  ],
  sources: [
    {
      title: 'public pages of bottle makers and of a research project on returnable PET',
      place: 'wash temperatures',
      mark: 'read',
    },
    {
      title: 'public instructions for sanitising polycarbonate jugs',
      place: '120 to 140 degF, 1 to 2 %',
      mark: 'read',
    },
  ],
  compute: ({ bottle, temperatures }: PlasticTemperatureInputs) => {
    const hottest = temperatures.reduce((a, b) => Math.max(a, b));
    const { highest } = plasticLimits[bottle];
    return { hottest, highest, margin: highest - hottest };
  },
});
