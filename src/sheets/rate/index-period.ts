import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { stretches, times } from './bounds.ts';
import { definition } from './sources.ts';

/** What ends the dwell: a timer that knows nothing of the mains, or a cam on the drive. */
export type DwellBy = 'timer' | 'drive';

export interface IndexPeriod {
  /** Stroke on this floor, s. */
  readonly strokeHere: number;
  /** Dwell on this floor, s. */
  readonly dwellHere: number;
  /** Both together, s. */
  readonly index: number;
}

/**
 * Period of an index on a floor whose frequency is not that for which the drive was rated, or whose air is weaker.
 *
 * Method   t_i = sigma t_s + t_+ + delta t_d,  delta = sigma where the drive ends the dwell, 1 where a timer does
 * Symbols  t_s    stroke   scalar  s      at rated frequency, >= 0
 *          t_d    dwell    scalar  s      at rated frequency, >= 0
 *          sigma  stretch  ratio          rated frequency over the floor's; 1 behind an inverter
 *          t_+    added    scalar  s      that its cylinders take longer here than where it was built; may be negative
 * Returns  stroke, dwell and their sum on this floor, s
 * Assumes  speed in proportion to frequency; the slip of an induction motor hardly changes with it
 * Cost     O(1)
 * Source   definition; synchronous speed n = f/p
 */
export const indexPeriod = (
  stroke: number,
  dwell: number,
  stretch: number,
  dwellBy: DwellBy,
  added = 0,
): IndexPeriod => {
  const strokeHere = stroke * stretch + added;
  const dwellHere = dwell * (dwellBy === 'drive' ? stretch : 1);
  return { strokeHere, dwellHere, index: strokeHere + dwellHere };
};

interface IndexPeriodInputs {
  readonly stroke: number;
  readonly dwell: number;
  readonly stretch: number;
  readonly dwellBy: DwellBy;
  readonly added: number;
}

const hereOf = (i: IndexPeriodInputs): IndexPeriod =>
  indexPeriod(i.stroke, i.dwell, i.stretch, i.dwellBy, i.added);

export const indexPeriodSheet = defineSheet({
  id: 'rate/index-period',
  version: 2,
  inputs: {
    stroke: numberField('time', 't_s', times),
    dwell: numberField('time', 't_d', times),
    stretch: numberField('ratio', '\\sigma', stretches),
    dwellBy: choiceField<DwellBy>('\\text{dwell}', ['timer', 'drive'], 'timer'),
    added: numberField('time', 't_+', { least: -1e9, most: 1e9, assumed: 0 }),
  },
  outputs: {
    index: numberField('time', 't_i'),
    strokeHere: numberField('time', "t_s'"),
    dwellHere: numberField('time', "t_d'"),
  },
  formula: [
    "t_i = t_s' + t_d', \\quad t_s' = \\sigma\\, t_s + t_+",
    "t_d' = \\sigma\\, t_d \\ \\text{(drive)}, \\quad t_d' = t_d \\ \\text{(timer)}",
  ],
  limits: [
    { code: 'INDEX_OTHER_FREQUENCY', broken: ({ stretch }) => stretch !== 1 },
    { code: 'INDEX_CYLINDERS_ADDED', broken: ({ added }) => added !== 0 },
  ],
  sources: [definition],
  check: (i) => {
    const { strokeHere, index } = hereOf(i);
    // a stroke cannot end before it begins, whatever the dwell is
    return strokeHere >= 0 && (index > 0 || i.added === 0)
      ? []
      : [
          {
            code: 'INDEX_NOT_POSITIVE',
            path: 'added',
            given: i.added,
            allowed: `> ${-i.stroke * i.stretch}`,
          },
        ];
  },
  compute: (i: IndexPeriodInputs) => hereOf(i),
});
