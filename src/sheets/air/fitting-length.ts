import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { type Fitting, fittingLengths, type NominalSize, nominalSizes } from './fitting-lengths.ts';

interface FittingLengthInputs {
  readonly size: NominalSize;
  readonly longBends: number;
  readonly elbows: number;
  readonly teeRuns: number;
  readonly teeBranches: number;
}

const counts = { least: 0, most: 1000, assumed: 0 } as const;
const fittings: readonly Fitting[] = ['longBends', 'elbows', 'teeRuns', 'teeBranches'];

export const fittingLengthSheet = defineSheet({
  id: 'air/fitting-length',
  version: 1,
  inputs: {
    size: choiceField<NominalSize>('\\mathrm{DN}', nominalSizes),
    longBends: numberField('count', 'n_1', counts),
    elbows: numberField('count', 'n_2', counts),
    teeRuns: numberField('count', 'n_3', counts),
    teeBranches: numberField('count', 'n_4', counts),
  },
  outputs: { length: numberField('length', 'L_e') },
  formula: ['L_e = \\sum_i n_i L_{e,i}(\\mathrm{DN})'],
  limits: [{ code: 'FITTINGS_EMPIRICAL', broken: () => true }],
  sources: [
    {
      title: 'engineering web handbook, pressure drop in compressed air fittings',
      place: 'metric table',
      mark: 'read',
    },
  ],
  compute: (i: FittingLengthInputs) => {
    const column = nominalSizes.indexOf(i.size);
    return { length: fittings.reduce((sum, name) => sum + i[name] * fittingLengths[name][column]!, 0) };
  },
});
