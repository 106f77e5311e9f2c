import { numberField, weighedField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { someFillVolumes } from './fill-bounds.ts';
import { presetTheory } from './fill-sources.ts';

interface GiveawayInputs {
  readonly mean: number;
  readonly label: number;
  readonly rate: number;
  readonly dailyTime: number;
  readonly days: number;
}

interface GiveawayOutputs {
  readonly perBottle: number;
  readonly share: number;
  readonly perDay: number;
  readonly perYear: number;
}

/**
 * What a mean above the label gives away.
 *
 * Method   (mean - label) times the bottles of a day and a year
 * Symbols  mean       contents at the reference temperature  m3
 *          label      Q                                      m3
 *          rate       bottles                                1/s
 *          dailyTime  of filling in a day                    s
 *          days       in a year
 * Returns  given away a bottle, as share of the label, a day, a year; negative where the mean is short
 * Cost     O(1)
 * Source   definition
 */
const giveaway = ({ mean, label, rate, dailyTime, days }: GiveawayInputs): GiveawayOutputs => {
  const perBottle = mean - label;
  const perDay = perBottle * rate * dailyTime;
  return { perBottle, share: perBottle / label, perDay, perYear: perDay * days };
};

export const giveawaySheet = defineSheet<GiveawayInputs, GiveawayOutputs>({
  id: 'contents/giveaway',
  version: 1,
  inputs: {
    mean: weighedField('volume', '\\mu', someFillVolumes),
    label: weighedField('volume', 'Q', { least: 1e-6, most: 1 }),
    rate: numberField('rate', 'R', { above: 0, most: 1e3 }),
    dailyTime: numberField('time', 't_d', { above: 0, most: 86_400 }),
    days: numberField('count', 'n_d', { above: 0, most: 366 }),
  },
  outputs: {
    perBottle: weighedField('volume', 'g'),
    share: numberField('ratio', 'g/Q'),
    perDay: weighedField('volume', 'G_d'),
    perYear: weighedField('volume', 'G'),
  },
  formula: ['g = \\mu - Q, \\quad G_d = g R t_d, \\quad G = G_d n_d'],
  limits: [{ code: 'GIVEAWAY_SHORT', broken: (_, { perBottle }) => perBottle < 0 }],
  sources: [presetTheory],
  compute: giveaway,
});
