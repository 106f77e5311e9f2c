import { choiceField, numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { always, caution } from './caution.ts';
import { threePhaseRows } from './full-load-currents.ts';
import { horsepower } from './horsepower.ts';

const capacityTable: Source = {
  title: 'instruction of a motor maker on 50 Hz operation of 60 Hz motors',
  place: 'table of capacity factors, public page',
  mark: 'read',
};

/** Share of the plate that a 60 Hz motor of 230, 460 or 575 V may give on 50 Hz: open, totally enclosed. */
const shares = {
  '190/380/475': [0.85, 0.8],
  '200/400/500': [0.8, 0.75],
  '208/415/520': [0.75, 0.7],
} as const;
export type FiftyHertzSupply = keyof typeof shares;
const supplies = Object.keys(shares) as FiftyHertzSupply[];
export type Enclosure = 'open' | 'enclosed';

const sameRating = 1e-9;

/**
 * 60 Hz motor that gives a power on 50 Hz.
 *
 * Method   P_60 = P/share by supply and enclosure, next plate rating up
 * Symbols  P  power  scalar  W asked at 50 Hz
 * Returns  share, W needed on the plate, W of the next rating; the last undefined over 100 hp
 * Assumes  plate of 230, 460 or 575 V; the result has a service factor of 1.0
 * Cost     O(ratings)
 * Source   motor maker's instruction on 50 Hz operation of 60 Hz motors
 */
export const motorOn50Hz = (
  power: number,
  supply: FiftyHertzSupply,
  enclosure: Enclosure,
): { readonly share: number; readonly needed: number; readonly rating: number | undefined } => {
  const share = shares[supply][enclosure === 'open' ? 0 : 1];
  const needed = power / share;
  const row = threePhaseRows.find(({ hp }) => hp * horsepower >= needed * (1 - sameRating));
  return { share, needed, rating: row === undefined ? undefined : row.hp * horsepower };
};

interface MotorOn50HzInputs {
  readonly power: number;
  readonly supply: FiftyHertzSupply;
  readonly enclosure: Enclosure;
}

export const motorOn50HzSheet = defineSheet({
  id: 'power/motor-on-50-hz',
  version: 1,
  inputs: {
    power: numberField('power', 'P', { least: 1, most: 1e6 }),
    supply: choiceField<FiftyHertzSupply>('U_{50}', supplies),
    enclosure: choiceField<Enclosure>('\\text{enclosure}', ['open', 'enclosed']),
  },
  outputs: {
    share: numberField('ratio', 'k'),
    needed: numberField('power', 'P_{60}'),
    rating: numberField('power', 'P_N'),
  },
  formula: ['P_{60} = \\frac{P}{k}, \\quad P_N = \\min \\{ p \\ge P_{60} \\}'],
  limits: [caution, always('FIFTY_HERTZ_TABLE')],
  sources: [capacityTable],
  check: (i) =>
    motorOn50Hz(i.power, i.supply, i.enclosure).rating === undefined
      ? [beyondTable('power', i.power, '100 hp on the plate', capacityTable)]
      : [],
  compute: (i: MotorOn50HzInputs) => {
    const { share, needed, rating } = motorOn50Hz(i.power, i.supply, i.enclosure);
    return { share, needed, rating: rating! };
  },
});
