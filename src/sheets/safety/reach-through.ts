import { choiceField, numberField } from '../fields.ts';
import { defineSheet, type Source } from '../frame.ts';
import { always, guardingCaution } from './caution.ts';

export const openings = ['slot', 'square', 'round'] as const;
export type Opening = (typeof openings)[number];

/** mm: width up to which a row counts, then how far a limb reaches through a slot, a square and a round opening. */
const reaches: readonly (readonly [width: number, slot: number, square: number, round: number])[] = [
  [4, 2, 2, 2],
  [6, 10, 5, 5],
  [8, 20, 15, 5],
  [10, 80, 25, 20],
  [12, 100, 80, 80],
  [20, 120, 120, 120],
  [30, 850, 120, 120],
  [40, 850, 200, 120],
  [120, 850, 850, 850],
];
/** m: widest opening of the table; a slot that stops the thumb, and what is then reached. */
const widest = 0.12;
const thumbWidth = 0.03;
const thumbLength = 0.065;
const thumbReach = 0.2;
// a conversion from inches must not push a width off the row that it ends
const rounding = 1e-9;

/**
 * How far an arm, a hand or a finger reaches through an opening.
 *
 * Method   the row whose width is not passed; a slot up to 30 by 65 mm: 200 mm at most (the thumb stops)
 * Symbols  opening  slot, square or round
 *          e        width   scalar  m  narrow side of a slot, side of a square, diameter
 *          l        length  scalar  m  of a slot
 * Returns  m
 * Assumes  14 years and older; no value between rows
 * Cost     O(rows)
 * Source   ISO 13857, reach through regular openings
 */
export const reachThrough = (opening: Opening, width: number, length: number): number => {
  const row = reaches.find(([upTo]) => width <= upTo / 1000 + rounding)!;
  const reach = row[1 + openings.indexOf(opening)]! / 1000;
  const stopped = opening === 'slot' && width <= thumbWidth + rounding && length <= thumbLength + rounding;
  return stopped ? Math.min(reach, thumbReach) : reach;
};

const reachTable: Source = {
  title: 'ISO 13857, reach through regular openings',
  place: 'two public transcriptions of the table, ages of 14 and over; slots of 30 by 65 mm from the second',
  mark: 'read',
};

interface ReachThroughInputs {
  readonly opening: Opening;
  readonly width: number;
  readonly length: number;
}

export const reachThroughSheet = defineSheet({
  id: 'safety/reach-through',
  version: 1,
  inputs: {
    opening: choiceField<Opening>('\\text{opening}', openings),
    width: numberField('length', 'e', { above: 0, most: widest, table: reachTable }),
    length: numberField('length', 'l', { above: 0, most: 100, assumed: 1 }),
  },
  outputs: { reach: numberField('length', 's_r') },
  formula: [
    's_r = s_k(\\text{opening}), \\quad k = \\min \\{ k : e \\le e_k \\}',
    '\\text{slot}, \\ e \\le 30, \\ l \\le 65: \\quad s_r = \\min(s_k,\\ 200) \\qquad (\\mathrm{mm})',
  ],
  limits: [
    guardingCaution,
    always('REACH_FROM_14'),
    {
      code: 'REACH_THUMB',
      broken: ({ opening, width }, { reach }) =>
        opening === 'slot' && width > 0.02 + rounding && reach <= thumbReach,
    },
    always('REACH_LOW_GUARDS'),
  ],
  sources: [reachTable],
  compute: ({ opening, width, length }: ReachThroughInputs) => ({
    reach: reachThrough(opening, width, length),
  }),
});
